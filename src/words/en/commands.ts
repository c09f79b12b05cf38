/** Texts of the terminal commands. */
export const commands = {} as const;
