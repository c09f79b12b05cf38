/** Stops the program on a programmer's mistake, in production too. Never used for bad input. */
export function assert(condition: unknown, what: string): asserts condition {
  if (!condition) throw new Error(`broken promise: ${what}`);
}

/** For the last branch of a switch over a union: a compile error when a case is missing. */
export function never(value: never): never {
  throw new Error(`not expected: ${JSON.stringify(value)}`);
}
