/** What the journal says was done to a colony or befell it, as the model takes it. */

/** Shares 0 … 1 of what was there; cells and kilograms where it came from outside. */
export type Happening =
  | { readonly kind: 'swarm left' }
  | { readonly kind: 'queen gone' }
  | { readonly kind: 'queen given' }
  | { readonly kind: 'queen found' }
  | { readonly kind: 'cells cut' }
  | { readonly kind: 'fed'; readonly kg: number }
  /** Combs with their bees went: to a split, to another hive, to the kitchen. */
  | {
      readonly kind: 'part left';
      readonly bees: number;
      readonly brood: number;
      readonly food: number;
      readonly comb: number;
      readonly queen: 'stayed' | 'went' | 'unknown';
    }
  | {
      readonly kind: 'joined';
      readonly bees: number;
      readonly broodCells: number;
      readonly honeyKg: number;
      readonly comb: number;
    }
  /** Bars hang there that can hold so many worker cells in all. */
  | { readonly kind: 'bars'; readonly cells: number };
