import { builtIn } from './parser/trade/index.ts';
import { everyday } from './parser/hearing/everyday.ts';
import { isWord } from './parser/hearing/ownWords.ts';
import { readFileSync } from 'node:fs';
const v=builtIn();
const rows=readFileSync('fixtures/hearing/talk.jsonl','utf8').trim().split('\n').map(l=>JSON.parse(l));
for(const f of ['seen','fresh','opened','opened-2','opened-3','opened-4','opened-5']) rows.push(...readFileSync(`fixtures/hearing/${f}.jsonl`,'utf8').trim().split('\n').map(l=>JSON.parse(l)));
const isName=(w:string)=>{const m=v.match([{kind:'word',word:w,text:w,start:0,end:w.length,spaced:true}] as any,0); return m?m.term.kind+':'+m.term.name:''};
for (const r of rows){ const h=r.heard.toLowerCase(); if(/\s/.test(h)) continue; console.log(r.meant?'YES':'no ',h,'->',r.meant??r.also??'', '| has',v.has(h),'name',isName(h),'everyday',everyday(h),'isWord',isWord(h,v)); }
