/** All rules on one colony, weighed: what is given and what is put aside. Nothing is advised of a colony that has ended. */
import { rules } from './list.ts';
import type { Facts } from './rule.ts';
import { weigh, type Weighed } from './weigh.ts';

export function advise(facts: Facts): Weighed {
  if (facts.view.ended !== null && facts.view.ended.day <= facts.view.day) return { kept: [], silenced: [] };
  return weigh(rules.flatMap((rule) => rule.advise(facts)));
}
