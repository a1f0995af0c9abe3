/** How a check went: all is well, worth knowing, think again, or do not go on. Matches the severity of the rule it feeds. */
export type Verdict = 'pass' | 'note' | 'warn' | 'stop';

/** At equality a check passes, also where a computer's last binary digit says otherwise. */
export const atMost = (value: number, limit: number): boolean => value <= limit + 1e-9 * Math.abs(limit);
