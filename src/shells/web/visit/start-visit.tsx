/** Before the first bar: what kind of visit, from which end, bees brushed or not. One tap when all is as usual. */
import { useState } from 'react';
import { Link } from 'wouter';
import { type VisitKind } from '../../../colony/visit.ts';
import { useText } from '../frame/manner.tsx';
import { useYard } from '../model/use-yard.tsx';
import { bayWithFollower, combPlaces, joinedAtStart, likelyKind } from './beginning.ts';
import { type Order, placesToRead } from './draft.ts';
import { OneOf } from './parts.tsx';
import { Shell } from './shell.tsx';
import { useHand } from './use-session.ts';

const kinds: readonly VisitKind[] = ['usual', 'first of the year', 'glance', 'after a swarm', 'closing for winter'];
const orders: readonly Order[] = ['from the follower', 'from the entrance'];

export function StartVisit() {
  const { t, say } = useText();
  const { view, ports, session } = useHand();
  const stop = useYard().picture?.round.find((each) => each.colony === view.colony) ?? null;
  const advised = stop === null || stop.first === null ? [] : [stop.first, ...stop.more];
  const shut = advised.find((advice) => advice.verb === 'leave shut') ?? null;
  const [kind, setKind] = useState(() => likelyKind(view, stop));
  const [order, setOrder] = useState<Order>('from the follower');
  const [brushed, setBrushed] = useState(false);
  const bay = bayWithFollower(view);
  const combs = combPlaces(view);
  const places = placesToRead(kind, order, bay, combs);
  const first = places[0] ?? bay.to;
  const begin = () =>
    void session.begin({
      visit: ports.newId(),
      entry: ports.newId(),
      yard: ports.yard,
      by: ports.by,
      colony: view.colony,
      hive: view.hive,
      began: ports.now().at,
      visitKind: kind,
      order,
      bay,
      hiveBars: view.hiveBars,
      brushed,
      combs,
      gaps: view.gaps,
      joined: joinedAtStart(view),
      foretold: ports.foretell(view),
    });
  return (
    <Shell
      title={t('visiting.title-start', { colony: view.name })}
      foot={
        <>
          <Link className="button" href={`/colony/${view.colony}`}>
            {t('visiting.not-now')}
          </Link>
          <button type="button" className="visit-go" onClick={begin}>
            {t('visiting.start', { place: String(first) })}
          </button>
        </>
      }
    >
      {shut === null ? null : <p className="visit-stop">{t('visiting.advised-shut', { why: say(shut.say) })}</p>}
      <OneOf
        legend={t('visiting.kind')}
        columns={3}
        value={kind}
        onChoose={setKind}
        options={kinds.map((value) => ({ value, label: t(`visiting.kind.${value}`) }))}
      />
      <p>
        {t(`visiting.kind-about.${kind}`)} {t('visiting.lifts', { n: places.length, from: String(bay.from), to: String(bay.to) })}
      </p>
      {kind === 'glance' ? null : (
        <OneOf
          legend={t('visiting.order')}
          columns={2}
          value={order}
          onChoose={setOrder}
          options={orders.map((value) => ({ value, label: t(`visiting.order.${value}`) }))}
        />
      )}
      <OneOf
        legend={t('visiting.brushed')}
        columns={2}
        value={brushed ? 'yes' : 'no'}
        onChoose={(value) => setBrushed(value === 'yes')}
        options={(['no', 'yes'] as const).map((value) => ({ value, label: t(`visiting.brushed.${value}`) }))}
      />
      <p className="small">{t('visiting.start-caution')}</p>
    </Shell>
  );
}
