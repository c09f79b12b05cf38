/** One sentence to confirm: what goes into the journal, in words, before it goes. */
import { useText } from '../frame/manner.tsx';
import type { Draft } from './draft.ts';
import { closingSentence } from './sentence.ts';
import type { Trouble } from './session.ts';
import { Shell } from './shell.tsx';
import { useHand } from './use-session.ts';

export function ClosingConfirm({ draft, trouble }: { readonly draft: Draft; readonly trouble: Trouble | null }) {
  const { t, manner } = useText();
  const { view, close, toPhase } = useHand();
  const done = draft.phase === 'done';
  return (
    <Shell
      title={t('visiting.title-confirm', { colony: view.name })}
      trouble={trouble}
      foot={
        done ? null : (
          <>
            <button type="button" onClick={() => toPhase('colony')}>
              {t('visiting.previous')}
            </button>
            <button type="button" className="visit-go" onClick={close}>
              {t('visiting.close')}
            </button>
          </>
        )
      }
    >
      <p className="visit-sentence">{closingSentence(draft, view.name, manner)}</p>
      <p>{t('visiting.confirm-about')}</p>
    </Shell>
  );
}
