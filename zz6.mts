import { readFileSync } from 'node:fs';
import { builtIn } from './parser/trade/index.ts';
import { tokenise } from './parser/hearing/tokens.ts';
import { candidatesAt } from './parser/hearing/stretches.ts';
import { meantOf } from './parser/hearing/meant.ts';
import { signsOf } from './parser/hearing/signs.ts';
import { weightOf } from './parser/hearing/weights.ts';
import { hear } from './parser/hearing/index.ts';
const v=builtIn(); const rows:any[]=[]; const sq=(s:string)=>s.toLowerCase().replace(/[^a-z]/g,'').replace(/s$/,'');
for(const f of ['fresh','opened','opened-2','opened-3','opened-4','opened-5']) rows.push(...readFileSync(`fixtures/hearing/${f}.jsonl`,'utf8').trim().split('\n').map(l=>JSON.parse(l)));
for(const r of rows){ const h=hear(r.text,v); if(sq(h.tokens.map(t=>t.skip?'':t.word).join('')).includes(sq(r.meant))) continue;
 const tokens=tokenise(r.text); const out:string[]=[]; const s0=r.text.indexOf(r.heard), e0=s0+r.heard.length;
 for(let i=0;i<tokens.length;i++) for(const c of candidatesAt(tokens,i,v)){ const a=tokens[c.from]!.start,b=tokens[c.until-1]!.end; if(a>=e0||b<=s0) continue; const m=meantOf(c.way); const {signs,because}=signsOf(c,m,tokens,v); const sc=signs.reduce((s,[n,x])=>s+x*weightOf(n),0); out.push(`${r.text.slice(a,b)}>${m} ${sc.toFixed(1)}${because?'':'!'}${sq(m).includes(sq(r.meant))?' <<<':''}`); }
 console.log(r.heard,'=>',r.meant,'|',out.sort((a,b)=>Number(/ (-?[\d.]+)/.exec(b)![1])-Number(/ (-?[\d.]+)/.exec(a)![1])).slice(0,4).join('; '),'| any right:',out.some(o=>o.includes('<<<'))); }
