/** The ports of the visit, made of the yard that the frame holds. */
import { useMemo } from 'react';
import { barsForetold, farBar } from '../../../apiary/bar-far.ts';
import type { ColonyView } from '../../../colony/view.ts';
import { useDrawings } from '../frame/drawings.ts';
import { useManner } from '../frame/manner.tsx';
import { instantOf } from '../model/clock.ts';
import { newId } from '../model/notes.ts';
import { painted } from '../model/painted.ts';
import { useYard, useYardModel } from '../model/use-yard.tsx';
import { drawnReading } from './drawn-reading.ts';
import { expectationOf } from './expectation.ts';
import type { VisitPorts } from './ports.ts';

export function useVisitPorts(view: ColonyView): VisitPorts {
  const model = useYardModel();
  const manner = useManner();
  const { troughOf } = useDrawings();
  const { yard, observer, today, aside, now, picture } = useYard();
  const away = picture?.away ?? noneAway;
  const widths = picture?.hives.find(({ id }) => id === view.hive)?.widths ?? null;
  const trough = troughOf(view.hive);
  const authority = aside.contacts.find((contact) => contact.role === 'authority');
  const { overrides } = aside;
  const name = authority?.name ?? null;
  const phone = authority?.phone ?? null;
  return useMemo(
    () => ({
      yard,
      by: observer,
      today,
      manner,
      trough,
      away,
      widths,
      newId,
      now: () => {
        const moment = new Date();
        return { noted: instantOf(moment), at: now(), ms: moment.getTime() };
      },
      loadDraft: (key) => model.drafts.get(key),
      saveDraft: (key, draft) => model.drafts.put(key, draft),
      deleteDraft: (key) => model.drafts.remove(key),
      painted,
      append: async (entries) => {
        const taken = await model.take(entries);
        return taken.ok ? null : taken.issues;
      },
      expect: (seen, reading) => expectationOf(seen, reading, overrides),
      foretell: (seen) => barsForetold(seen, overrides),
      far: (foretold, place, readings) => farBar(foretold, place, readings, overrides),
      drawn: drawnReading,
      authority: name === null || phone === null ? null : { name, phone },
      // `now` is made anew with every entry; what it reads (day, time zone) is named here.
    }),
    [model, yard, observer, today, manner, trough, away, widths, overrides, name, phone],
  );
}

const noneAway: VisitPorts['away'] = [];
