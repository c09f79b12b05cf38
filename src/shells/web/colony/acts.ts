/** What can be written down of a colony beside visits: the rare, large things, each with a form of its own. */
export const colonyActs = ['requeened', 'split', 'united', 'moved', 'ended', 'measured'] as const;
export type ColonyAct = (typeof colonyActs)[number];
