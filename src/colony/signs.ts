/**
 * Signs that may be seen on a comb or at a hive, described and never named as an illness. A sign is
 * one of three: worth a note, ask someone who knows, or stop here. Which illness, if any, is for the
 * authority and its laboratory to say.
 */
export type SignLevel = 'note' | 'ask' | 'stop';

export interface Sign {
  readonly code: string;
  readonly level: SignLevel;
  /** Where it is looked for. */
  readonly where: 'brood' | 'bees' | 'comb' | 'hive';
}

export const signs = [
  { code: 'several eggs in a cell', level: 'note', where: 'brood' },
  { code: 'domed caps on worker cells', level: 'note', where: 'brood' },
  { code: 'uncapped pupae', level: 'note', where: 'brood' },
  { code: 'hard white or grey brood', level: 'note', where: 'brood' },
  { code: 'twisted or yellow larvae', level: 'ask', where: 'brood' },
  { code: 'sunken or pierced caps', level: 'ask', where: 'brood' },
  { code: 'ropy brown thread', level: 'stop', where: 'brood' },
  { code: 'dark scale that does not lift', level: 'stop', where: 'brood' },
  { code: 'crumpled wings', level: 'ask', where: 'bees' },
  { code: 'trembling or hairless bees', level: 'ask', where: 'bees' },
  { code: 'mites on bees', level: 'note', where: 'bees' },
  { code: 'small mites that run', level: 'stop', where: 'bees' },
  { code: 'small dark beetles', level: 'stop', where: 'hive' },
  { code: 'wax moth webbing', level: 'note', where: 'comb' },
  { code: 'droppings inside', level: 'ask', where: 'hive' },
  { code: 'robbing', level: 'note', where: 'hive' },
  { code: 'many dead bees', level: 'ask', where: 'hive' },
  { code: 'large hornets hunting', level: 'stop', where: 'hive' },
] as const satisfies readonly Sign[];

export type SignCode = (typeof signs)[number]['code'];
