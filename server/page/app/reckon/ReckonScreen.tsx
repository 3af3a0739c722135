import { useEffect, useRef, useState } from 'preact/hooks';
import { type Answer, answerTo } from '../kit/reckon.ts';
import { Answered } from './Answered.tsx';
import { BUYING } from './buying.ts';
import { FieldRow } from './FieldRow.tsx';
import { type Question, readFields } from './fields.ts';
import { FITTING } from './fitting.ts';

const SIDES = {
  reckon: { title: 'How much to buy', of: BUYING, other: { href: '#fit', words: 'Does it fit?' } },
  fit: { title: 'Does it fit?', of: FITTING, other: { href: '#reckon', words: 'How much to buy' } },
} as const;

/** The trade's computing without a note: pick what, type the sizes, get the answer with its working. */
export function ReckonScreen({ side, canOrder }: { side: 'reckon' | 'fit'; canOrder: boolean }) {
  const { title, of, other } = SIDES[side];
  const [question, setQuestion] = useState<Question>(of[0]!);
  return (
    <div class={side}>
      <div class="title-row">
        <h1>{title}</h1>
        <a class="plain" href={other.href}>
          {other.words}
        </a>
      </div>
      <label class="asks">
        What
        <select
          value={question.key}
          onChange={(e) => setQuestion(of.find(({ key }) => key === e.currentTarget.value)!)}
        >
          {of.map(({ key, words }) => (
            <option key={key} value={key}>
              {words}
            </option>
          ))}
        </select>
      </label>
      <Form key={question.key} question={question} canOrder={canOrder} />
    </div>
  );
}

function Form({ question, canOrder }: { question: Question; canOrder: boolean }) {
  const [answer, setAnswer] = useState<Answer | null>(null);
  const place = useRef<HTMLDivElement>(null);
  // It stands under the form, which fills a phone.
  useEffect(() => {
    if (answer) place.current?.scrollIntoView({ block: 'nearest' });
  }, [answer]);
  const ask = async (form: FormData) => {
    const fields = readFields(question.fields, (name) => String(form.get(name) ?? ''));
    setAnswer(await answerTo(question, fields));
  };
  return (
    <>
      {/* An answer to other sizes than those in the boxes would be believed. */}
      <form
        class="reckoning"
        onInput={() => setAnswer(null)}
        onSubmit={(e) => {
          e.preventDefault();
          void ask(new FormData(e.currentTarget));
        }}
      >
        {question.fields.map((field) => (
          <FieldRow key={field.name} field={field} />
        ))}
        <button type="submit" class="primary">
          {question.goods ? 'Work it out' : 'Check'}
        </button>
      </form>
      <div ref={place} aria-live="polite">
        {answer && <Answered answer={answer} goods={canOrder ? (question.goods ?? null) : null} />}
      </div>
    </>
  );
}
