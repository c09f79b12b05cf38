/** The advice with its reasons: what forbids first, then what is due, each with what would change it and where its numbers come from. */
import type { Advice, Cite, Saying } from '../../../advice/advice.ts';
import { sayChance } from '../../../words/text.ts';
import { useText } from '../frame/manner.tsx';
import { windowPart } from '../frame/parts.ts';
import { Sources } from './sources.tsx';

export function Why({ advice }: { readonly advice: readonly Advice[] }) {
  const { t } = useText();
  const forbids = advice.flatMap((one) => one.forbids);
  const cautions = [...new Set(advice.flatMap((one) => one.cautions))];
  return (
    <section>
      <h2>{t('colony.due')}</h2>
      {advice.length === 0 ? <p>{t('round.nothing-due')}</p> : null}
      {forbids.length === 0 ? null : <Forbids forbids={forbids} />}
      {advice.map((one, n) => (
        <OneAdvice key={`${one.rule}-${n}`} advice={one} />
      ))}
      {cautions.length === 0 ? null : (
        <ul className="cautions">
          {cautions.map((caution) => (
            <li key={caution}>{t(`caution.${caution}`)}</li>
          ))}
        </ul>
      )}
    </section>
  );
}

function Forbids({ forbids }: { readonly forbids: readonly Advice['forbids'][number][] }) {
  const { t, say } = useText();
  const lines = [
    ...new Set(
      forbids.map((one) =>
        t('colony.forbid', {
          act: t(`act.${one.act}`),
          window: windowPart(one.window),
          why: say(one.why),
        }),
      ),
    ),
  ];
  return (
    <ul className="forbids">
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}

function OneAdvice({ advice }: { readonly advice: Advice }) {
  const { t, say, manner } = useText();
  const cites = [...advice.reasons, ...advice.wouldChange].flatMap(citesOf);
  return (
    <article className={advice.verb === 'leave shut' ? 'slip down' : 'slip'}>
      <p>
        <b>{say(advice.say)}</b>
      </p>
      {advice.reasons.map((reason, n) => (
        <p key={n}>{say(reason)}</p>
      ))}
      {advice.chance === null ? null : <p>{sayChance(advice.chance, manner)}</p>}
      {advice.wouldChange.length === 0 ? null : (
        <p className="soft">{t('colony.would-change', { what: advice.wouldChange.map((one) => say(one)).join(' ') })}</p>
      )}
      <Sources cites={cites} />
    </article>
  );
}

function citesOf(saying: Saying): readonly Cite[] {
  return Object.values(saying.slots).flatMap((slot) => ('cite' in slot ? [slot.cite] : []));
}
