import { readFileSync, writeFileSync } from 'node:fs';
import { heardTalk } from './tests/learn/heardTalk.ts';
const F='fixtures/hearing/talk.jsonl';
const more=JSON.parse(readFileSync(process.argv[2]!,'utf8')) as [string,string|null,string?,string?][];
const add:string[]=[];
for (const {text,judged} of heardTalk()) for (const [h,meant,ctx,also] of more) {
  for (const m of text.matchAll(new RegExp(`(?<![a-z'])${h}(?![a-z'])`,'gi'))) { const s=m.index,e=s+m[0].length;
    if (judged.some(j=>j.start<e&&j.end>s)) { if(ctx===undefined||ctx==='') continue; continue; }
    let a=Math.max(0,s-70), b=Math.min(text.length,e+60); while(a>0&&!/[ \n]/.test(text[a-1]!))a--; while(b<text.length&&!/[ \n]/.test(text[b]!))b++;
    const frag=text.slice(a,b); if (ctx && !new RegExp(ctx,'is').test(frag)) continue;
    add.push(JSON.stringify({text:frag,heard:m[0],meant,...(also?{also}:{})}));
  } }
console.log(add.map(x=>{const r=JSON.parse(x);return r.heard+' => '+(r.meant??'~'+r.also)+' | '+r.text.slice(40,110)}).join('\n'));
writeFileSync(F, readFileSync(F,'utf8').trim()+'\n'+add.join('\n')+'\n');
