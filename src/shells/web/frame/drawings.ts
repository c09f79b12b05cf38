/** The sheets' drawings with this yard's measures and this keeper's words: what the screens call, so that none of them draws. */
import { useMemo } from 'react';
import type { BarView, ColonyView, FilmFrame } from '../../../colony/view.ts';
import type { Day } from '../../../numbers/day.ts';
import { combFace } from '../../../sheets/comb-face.ts';
import { film } from '../../../sheets/film.ts';
import { lensAround } from '../../../sheets/places.ts';
import { strip } from '../../../sheets/strip.ts';
import type { Trough } from '../../../sheets/taper.ts';
import { useYard } from '../model/use-yard.tsx';
import { usePreferences, useText, type Wording } from './manner.tsx';
import { dayPart } from './parts.ts';
import { useWide } from './wide.ts';

export interface Drawings {
  /** The strip of the round: the whole trough, four kinds. */
  readonly roundStrip: (view: ColonyView) => string;
  /** The strip with seven bars large around one that is in hand. */
  readonly lensStrip: (view: ColonyView, place: number) => string;
  readonly face: (view: ColonyView, bar: BarView) => string;
  readonly film: (view: ColonyView, frames: readonly FilmFrame[]) => string;
  readonly troughOf: (hive: string) => Trough;
}

/** Only until the first picture says how the hive is measured. */
const unmeasured: Trough = { topWidthMm: 450, depthMm: 300, wallAngleDeg: 22, sideGapMm: 8, floorGapMm: 20 };

export function useDrawings(): Drawings {
  const { t } = useText();
  const wide = useWide();
  const textSize = useTextSize();
  const { troughs } = useYard().aside;
  return useMemo(() => {
    const troughOf = (hive: string): Trough => troughs[hive] ?? unmeasured;
    const common = (view: ColonyView) => ({
      ...troughOf(view.hive),
      hiveBars: view.hiveBars,
      bay: view.bay,
      entrance: view.entrance,
      ...(textSize === null ? {} : { textSize }),
      label: stripLabel(view, t),
    });
    return {
      troughOf,
      roundStrip: (view) => strip(view.bars, { ...common(view), density: 'far', width: 340, height: 78 }),
      lensStrip: (view, place) =>
        strip(view.bars, {
          ...common(view),
          density: 'far',
          width: 360,
          height: 150,
          ...(textSize === null || !wide ? {} : { textSize: textSize / 2 }),
          lens: lensAround(place, view.hiveBars),
          current: place,
          numbers: true,
        }),
      face: (view, bar) =>
        combFace(
          {
            built: bar.built,
            shares: bar.shares,
            ink: bar.ink,
            bees: bar.bees,
            cells: bar.cells,
            queenSeen: bar.queenSeen,
          },
          {
            ...troughOf(view.hive),
            width: 340,
            label: t('bars.face', { n: bar.place }),
            prefix: `face-${bar.place}`,
            sharedMarks: true,
          },
        ),
      film: (view, frames) =>
        film(
          frames.map((frame, n) => ({
            frame,
            date: shortDay(frame.day, t),
            note: yearNote(frame.day, frames[n - 1]?.day ?? null, t),
          })),
          {
            ...common(view),
            label: t('film.label', { name: view.name, count: frames.length }),
            width: wide ? 760 : 360,
            frameHeight: wide ? 78 : 62,
            bayFrom: view.bay.from,
            spacing: 'date',
          },
        ),
    };
  }, [t, wide, textSize, troughs]);
}

/** In full sun no letter is smaller than 20 px, in drawings neither; the wide ones are drawn a little larger than they are shown. */
export function useTextSize(): number | null {
  const { theme } = usePreferences().preferences;
  const wide = useWide();
  return theme === 'sun' ? (wide ? 23 : 20.5) : null;
}

export function shortDay(day: Day, t: Wording['t']): string {
  return t('film.date', {
    date: String(Number(day.slice(8))),
    month: t(`month-short.${Number(day.slice(5, 7))}` as 'month-short.1'),
  });
}

/** The year, where it has turned since the strip above. */
function yearNote(day: Day, before: Day | null, t: Wording['t']): string | null {
  return before === null || before.slice(0, 4) === day.slice(0, 4) ? null : t('film.year', { year: day.slice(0, 4) });
}

/** What a strip shows, for someone who hears it: bars with comb, bars with brood, what was not opened. */
export function stripLabel(view: ColonyView, t: Wording['t']): string {
  const combs = view.bars.filter((bar) => bar.kind !== 'bare').length;
  const brood = view.bars.filter(
    (bar) =>
      bar.shares !== null && bar.shares.egg + bar.shares.larva + bar.shares.sealed + bar.shares.emerging + bar.shares.drone > 0,
  );
  const unknown = view.bars.filter((bar) => bar.kind === 'unknown').length;
  const parts = [
    t('strip.combs', { name: view.name, day: dayPart(view.day), count: combs, bars: view.hiveBars }),
    brood.length === 0
      ? t('strip.no-brood')
      : t('strip.brood', {
          places: { kind: 'places', places: brood.map((bar) => bar.place), cite: { kind: 'worked out', from: [] } },
        }),
    unknown === 0 ? null : t('strip.unknown', { count: unknown }),
  ];
  return parts.filter((part) => part !== null).join(' ');
}
