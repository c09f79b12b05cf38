/** Closing for winter: each thing done, not done, or not asked. Nothing is required, nothing is judged. */
import { winterTasks } from '../../../apiary/visit-terms.ts';
import { useText } from '../frame/manner.tsx';
import type { Draft } from './draft.ts';
import type { Trouble } from './session.ts';
import { Shell } from './shell.tsx';
import { useHand } from './use-session.ts';

export function ClosingWinter({ draft, trouble }: { readonly draft: Draft; readonly trouble: Trouble | null }) {
  const { t } = useText();
  const { view, tap, toPhase } = useHand();
  return (
    <Shell
      title={t('visiting.title-winter', { colony: view.name })}
      trouble={trouble}
      foot={
        <>
          <button type="button" onClick={() => toPhase('row')}>
            {t('visiting.previous')}
          </button>
          <button type="button" className="visit-go" onClick={() => toPhase('colony')}>
            {t('visiting.next')}
          </button>
        </>
      }
    >
      <p>{t('visiting.winter-about')}</p>
      <div className="visit-list">
        {winterTasks.map((task) => (
          <div key={task} className="visit-asked" role="group" aria-label={t(`winter.${task}`)}>
            <span>{t(`winter.${task}`)}</span>
            {(['done', 'not done'] as const).map((answer) => (
              <button
                key={answer}
                type="button"
                aria-pressed={draft.closing.winter?.[task] === answer}
                onClick={() => tap({ kind: 'winter', task, answer })}
              >
                {t(`visiting.winter-${answer}`)}
              </button>
            ))}
          </div>
        ))}
      </div>
    </Shell>
  );
}
