/** One stop of the round as a line: what the deciding advice says, or that nothing is due. */
import type { Stop } from '../advice/plan.ts';
import { type Manner, plainManner } from './say.ts';
import { say, text } from './text.ts';

export function stopLine(stop: Stop, manner: Manner = plainManner): string {
  return stop.first === null ? text('round.nothing-due', {}, manner) : say(stop.first.say, manner);
}
