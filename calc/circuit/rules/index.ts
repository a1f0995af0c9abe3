import type { Finding } from '../model.ts';
import { backFeed } from './back-feed.ts';
import { coilInBetween } from './coil-in-between.ts';
import { contactOverload } from './contact-overload.ts';
import { doesNotSettle } from './does-not-settle.ts';
import { floatingLoad } from './floating-load.ts';
import { fuseOverWire } from './fuse-over-wire.ts';
import { fuseOverload } from './fuse-overload.ts';
import { nearThreshold } from './near-threshold.ts';
import { noCoilSuppression } from './no-coil-suppression.ts';
import { openGround } from './open-ground.ts';
import { parallelSources } from './parallel-sources.ts';
import { parallelThrows } from './parallel-throws.ts';
import { relayRace } from './relay-race.ts';
import { findingsOf, Look, type Rule, type RuleContext } from './rule.ts';
import { triggerOvercurrent } from './trigger-overcurrent.ts';
import { unfusedSource } from './unfused-source.ts';
import { wrongTruthTable } from './wrong-truth-table.ts';

/** Every rule, in the order in which its findings are read. */
export const RULES: readonly Rule[] = [
  fuseOverWire,
  unfusedSource,
  backFeed,
  noCoilSuppression,
  triggerOvercurrent,
  doesNotSettle,
  wrongTruthTable,
  floatingLoad,
  openGround,
  contactOverload,
  parallelSources,
  parallelThrows,
  fuseOverload,
  coilInBetween,
  nearThreshold,
  relayRace,
];

/**
 * What every rule says about a solved circuit, in the order of the rules.
 *
 * @param context netlist, solved states, and what is known of the intent and of the circuit as written
 * @returns findings; a good circuit has none
 */
export function checkRules(context: RuleContext): Finding[] {
  const look = new Look(context);
  return RULES.flatMap((rule) => findingsOf(rule, look));
}
