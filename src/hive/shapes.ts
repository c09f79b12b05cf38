/** Shapes that several kinds of this room and of the colony's share. */
import * as z from 'zod/mini';

/** A place of the trough, 1…n from the fixed end wall that is the datum. */
export const placeSchema = z.int().check(z.minimum(1), z.maximum(60));

/** A length as typed, and whether it was measured or is a typical value. */
export const dimensionSchema = z.strictObject({
  value: z.number().check(z.positive(), z.maximum(5000)),
  unit: z.enum(['mm', 'cm', 'in']),
  how: z.enum(['measured', 'typical']),
});

/** Faces are read in eighths of the comb as built. */
export const eighthsInWhole = 8;
