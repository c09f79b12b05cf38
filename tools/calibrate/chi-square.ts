/**
 * The upper tail of the chi-square distribution, by the series of the incomplete gamma function; exact to some
 * twelve digits for the few degrees of freedom and the values met here.
 */

/** Chance that a chi-square of so many degrees of freedom lies above x; x at least 0 and below some hundreds. */
export function chiSquareAbove(x: number, degrees: number): number {
  const a = degrees / 2;
  const half = x / 2;
  if (half === 0) return 1;
  let term = 1 / a;
  let sum = term;
  for (let n = 1; term > sum * 1e-16; n += 1) {
    term *= half / (a + n);
    sum += term;
  }
  return Math.max(0, 1 - Math.exp(a * Math.log(half) - half - logGammaHalves(degrees)) * sum);
}

/** log Γ(n/2), from Γ(1/2) = √π and Γ(1) = 1. */
function logGammaHalves(n: number): number {
  let log = n % 2 === 1 ? Math.log(Math.PI) / 2 : 0;
  for (let at = n % 2 === 1 ? 1 : 2; at < n; at += 2) log += Math.log(at / 2);
  return log;
}
