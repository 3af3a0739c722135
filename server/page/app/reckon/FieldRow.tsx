import { useState } from 'preact/hooks';
import { type Field, MOST_ROWS } from './fields.ts';

/** One field of the form, drawn by what it asks for. A field of a row is needed or not as the row is. */
export function FieldRow({
  field,
  under = '',
  needed = !field.may,
}: {
  field: Field;
  under?: string;
  needed?: boolean;
}) {
  const name = under + field.name;
  switch (field.as) {
    case 'length':
    case 'words':
      return (
        <label>
          <Label field={field} />
          <input
            name={name}
            required={needed}
            maxLength={40}
            autocomplete="off"
            placeholder={`such as ${field.example}`}
          />
        </label>
      );
    case 'number':
      return (
        <label>
          <Label field={field} />
          <input
            name={name}
            type="number"
            step="any"
            inputMode="decimal"
            required={needed}
            placeholder={`such as ${field.example}`}
          />
        </label>
      );
    case 'lengths':
      return (
        <label>
          {field.label}, one a line
          <textarea name={name} rows={3} required={needed} placeholder={`such as\n${field.example.join('\n')}`} />
        </label>
      );
    case 'pair':
      return (
        <fieldset>
          <legend>
            <Label field={field} />
          </legend>
          <div class="pair">
            {field.example.map((example, side) => (
              <label key={example}>
                <span class="hidden">{side ? 'by' : field.label}</span>
                <input
                  name={`${name}.${side}`}
                  required={needed}
                  maxLength={40}
                  autocomplete="off"
                  placeholder={`such as ${example}`}
                />
              </label>
            ))}
          </div>
        </fieldset>
      );
    case 'choice':
      return <Choice name={name} field={field} needed={needed} of={field.of} />;
    case 'known':
      return <Choice name={name} field={field} needed={false} of={YES_OR_NO} />;
    case 'group':
      return (
        <fieldset>
          <legend>
            <Label field={field} />
          </legend>
          <div class="row">
            {field.of.map((part) => (
              <FieldRow key={part.name} field={part} under={`${name}.`} needed={needed} />
            ))}
          </div>
        </fieldset>
      );
    case 'rows':
      return <Rows field={field} of={field.of} name={name} />;
  }
}

const YES_OR_NO = [
  ['yes', 'yes'],
  ['no', 'no'],
] as const;

/** What may be left out says so, since all else must be filled in. */
function Label({ field }: { field: Field }) {
  return (
    <>
      {field.label}
      {field.may && <small> if known</small>}
    </>
  );
}

function Choice({
  name,
  field,
  needed,
  of,
}: {
  name: string;
  field: Field;
  needed: boolean;
  of: readonly (readonly [value: string | number, words: string])[];
}) {
  return (
    <label>
      {field.label}
      <select name={name} required={needed}>
        {!needed && <option value="">not known</option>}
        {of.map(([value, words]) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </select>
    </label>
  );
}

/** As many of one kind as there are; a further one at a tap. */
function Rows({ field, of, name }: { field: Field; of: readonly Field[]; name: string }) {
  const [count, setCount] = useState(1);
  return (
    <fieldset>
      <legend>
        <Label field={field} />
      </legend>
      {Array.from({ length: count }, (_, k) => `${name}.${k}.`).map((under, k) => (
        <Row key={under} of={of} under={under} needed={!field.may && k === 0} />
      ))}
      {count < MOST_ROWS && (
        <button type="button" class="plain" onClick={() => setCount(count + 1)}>
          Another
        </button>
      )}
    </fieldset>
  );
}

/** One of them: once it is begun it has to be whole. */
function Row({ of, under, needed }: { of: readonly Field[]; under: string; needed: boolean }) {
  const [begun, setBegun] = useState(needed);
  return (
    <div
      class="row"
      onInput={(e) =>
        setBegun(needed || [...e.currentTarget.querySelectorAll('input')].some((input) => input.value !== ''))
      }
    >
      {of.map((part) => (
        <FieldRow key={part.name} field={part} under={under} needed={begun || part.as === 'choice'} />
      ))}
    </div>
  );
}
