/** Texts of advice: whole sentences, the key of the rule first. */
export const advice = {} as const;
