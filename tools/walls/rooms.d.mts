/** Types of rooms.mjs. */
export const rooms: readonly (readonly [name: string, about: string])[];
export const shells: readonly string[];
