import { heardTalk, judge } from './tests/learn/heardTalk.ts';
const q=process.argv[2]!.split('|');
for (const {text} of heardTalk()) for (const h of q){ const m=new RegExp(`(?<![a-z])${h}(?![a-z])`,'gi'); for(const x of text.matchAll(m)) console.log(`[${x[0]}] `+text.slice(Math.max(0,x.index-45),x.index+h.length+35).replace(/\n/g,'/')); }
