/** The five facts that no area gives, each a button that says what was answered and opens what is asked. */
import { useText } from '../frame/manner.tsx';
import type { BarDraft, Draft, Panel } from './draft.ts';
import { useHand } from './use-session.ts';

type Fact = 'eggs' | 'cells' | 'queen' | 'sign' | 'note';

const opens: Readonly<Record<Fact, Panel>> = {
  eggs: 'eggs',
  cells: 'cells',
  queen: 'queen',
  sign: 'sign-note',
  note: 'note',
};

export function Facts({ draft, bar }: { readonly draft: Draft; readonly bar: BarDraft }) {
  const { t } = useText();
  const { tap } = useHand();
  const { seen } = bar;
  const counted = seen.cells === null ? null : seen.cells.open + seen.cells.sealed + seen.cells.torn + seen.cells.emerged;
  const stop = draft.panel?.startsWith('sign') === true;
  const facts: readonly {
    readonly fact: Fact;
    readonly answer: string;
    readonly known: boolean;
    readonly open: boolean;
  }[] = [
    {
      fact: 'eggs',
      answer: t(`visiting.short.${seen.eggs}`),
      known: seen.eggs !== 'not looked',
      open: draft.panel === 'eggs',
    },
    {
      fact: 'cells',
      answer: counted === null ? t(`visiting.short.${seen.cellsLooked}`) : String(counted),
      known: seen.cellsLooked !== 'not looked',
      open: draft.panel === 'cells',
    },
    {
      fact: 'queen',
      answer: t(`visiting.short.${seen.queen}`),
      known: seen.queen !== 'not looked',
      open: draft.panel === 'queen',
    },
    {
      fact: 'sign',
      answer: seen.signs.length === 0 ? '–' : String(seen.signs.length),
      known: seen.signs.length > 0,
      open: stop,
    },
    { fact: 'note', answer: bar.note === '' ? '–' : '✓', known: bar.note !== '', open: draft.panel === 'note' },
  ];
  return (
    <div className="visit-facts" role="group" aria-label={t('visiting.facts')}>
      {facts.map(({ fact, answer, known, open }) => (
        <button
          key={fact}
          type="button"
          aria-expanded={open}
          data-known={known}
          onClick={() => tap({ kind: 'panel', panel: open ? null : opens[fact] })}
        >
          <span>{t(`visiting.${fact}`)}</span>
          <b>{answer}</b>
        </button>
      ))}
    </div>
  );
}
