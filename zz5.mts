import { readFileSync } from 'node:fs';
import { builtIn } from './parser/trade/index.ts';
import { everyday } from './parser/hearing/everyday.ts';
import { isWord } from './parser/hearing/ownWords.ts';
const v=builtIn(); const rows:any[]=[];
for(const f of ['talk','seen','fresh','opened','opened-2','opened-3','opened-4','opened-5']) rows.push(...readFileSync(`fixtures/hearing/${f}.jsonl`,'utf8').trim().split('\n').map(l=>JSON.parse(l)));
for(const r of rows) if(r.meant){ const name=r.meant.split(/[ -]/); const bad=r.heard.toLowerCase().split(' ').filter((w:string)=>w.length>4&&!name.includes(w)&&!everyday(w)&&isWord(w,v)); if(bad.length) console.log(r.heard,'->',r.meant,bad.join()); }
