/** The record of forecasts as sentences: how many fell inside their ranges, how far off, and whether that beats "as last time". */
import { recordMethods, type RecordScore } from '../colony/record.ts';
import { plainNumber } from './format-number.ts';
import { type Manner, plainManner } from './say.ts';
import { text } from './text.ts';

/** Two decimals: a factor of 1.05 and one of 1.1 are told apart. */
export function formatFactor(logRmse: number): string {
  return plainNumber(Math.exp(logRmse), 2);
}

/** What a score says; where what was forecast is no better than "as last time", that comes first. */
export function scoreLines(score: RecordScore, manner: Manner = plainManner): readonly string[] {
  const inside = text('record.inside', { inside: score.inside, n: score.n }, manner);
  const own = score.logRmse[score.shown];
  const last = score.logRmse['as last time'];
  if (own === null || last === null) return score.n === 0 ? [] : [inside, text('record.few', {}, manner)];
  const slots = { own: formatFactor(own), last: formatFactor(last) };
  if (score.isBetter === false) return [text('record.no-better', { ...slots, way: wayOf(score, manner) }, manner), inside];
  return [inside, text(score.isBetter === true ? 'record.better' : 'record.open', slots, manner)];
}

/** The same in one line, for a page that has many: "About 21 days ahead: 9 of 12 inside; off by ×1.3, …" */
export function briefLine(score: RecordScore, manner: Manner = plainManner): string {
  const { horizonDays: days, inside, n } = score;
  const own = score.logRmse[score.shown];
  const last = score.logRmse['as last time'];
  if (own === null || last === null) return text('record.brief-few', { days, inside, n }, manner);
  const factor = (off: number): string => text('record.factor', { factor: formatFactor(off) }, manner);
  const slots = { days, inside, n, own: factor(own), last: factor(last) };
  if (score.isBetter === false) return text('record.brief-no-better', { ...slots, way: wayOf(score, manner) }, manner);
  return text(score.isBetter === true ? 'record.brief-better' : 'record.brief-open', slots, manner);
}

/** The way that was scored, as it is called inside a sentence. */
function wayOf({ shown }: RecordScore, manner: Manner): string {
  return text(`record.method-${shown}`, {}, manner);
}

/** "Bees, about 21 days ahead" */
export function scoreHead({ what, horizonDays }: RecordScore, manner: Manner = plainManner): string {
  return text(`record.head-${what}`, { days: horizonDays }, manner);
}

/** What every way of foretelling was off by, the nearest first. */
export function methodLines(
  score: RecordScore,
  manner: Manner = plainManner,
): readonly { readonly method: string; readonly factor: string }[] {
  return recordMethods
    .flatMap((method) => {
      const off = score.logRmse[method];
      return off === null ? [] : [{ method, off }];
    })
    .sort((a, b) => a.off - b.off)
    .map(({ method, off }) => {
      const name = text(`record.method-${method}`, {}, manner);
      return {
        method: method === score.shown ? text('record.shown', { method: name }, manner) : name,
        factor: text('record.factor', { factor: formatFactor(off) }, manner),
      };
    });
}
