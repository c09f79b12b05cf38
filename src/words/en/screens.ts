/** Texts of the screens. */
export const screens = {} as const;
