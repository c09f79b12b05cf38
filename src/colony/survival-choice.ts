/** How workers die, as a field of a sum that may be left out; then it is the kind summer. */
import type { ChoiceField } from '../figures/field.ts';
import { choiceOrNull, type Given } from '../figures/read-input.ts';
import { type SurvivalSet, survivalSets } from './survival.ts';

export const survivalField: ChoiceField = {
  kind: 'choice',
  name: 'survival',
  choices: survivalSets,
  without: { kind: 'nothing' },
  about: 'how workers die; left out, benign',
};

export function survivalSetOf(given: Given): SurvivalSet {
  return choiceOrNull(given, survivalField.name, survivalSets) ?? 'benign';
}
