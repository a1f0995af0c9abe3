import type { Finding } from '../model.ts';
import { backFeed } from './back-feed.ts';
import { coilInBetween } from './coil-in-between.ts';
import { coilOnSwitch } from './coil-on-switch.ts';
import { contactForLoad } from './contact-for-load.ts';
import { contactOverload } from './contact-overload.ts';
import { doesNotSettle } from './does-not-settle.ts';
import { floatingLoad } from './floating-load.ts';
import { fuseFarFromSource } from './fuse-far-from-source.ts';
import { fuseOverWire } from './fuse-over-wire.ts';
import { fuseOverload } from './fuse-overload.ts';
import { fuseVoltage } from './fuse-voltage.ts';
import { halfLit } from './half-lit.ts';
import { halfOfPair } from './half-of-pair.ts';
import { inrushOverContact } from './inrush-over-contact.ts';
import { leftOnKeyOut } from './left-on-key-out.ts';
import { lowVoltageAtLoad } from './low-voltage-at-load.ts';
import { nearThreshold } from './near-threshold.ts';
import { noCoilSuppression } from './no-coil-suppression.ts';
import { oneSidedLoad } from './one-sided-load.ts';
import { openGround } from './open-ground.ts';
import { outputLimitUnknown } from './output-limit-unknown.ts';
import { parallelSources } from './parallel-sources.ts';
import { parallelThrows } from './parallel-throws.ts';
import { partVoltage } from './part-voltage.ts';
import { relayRace } from './relay-race.ts';
import { findingsOf, Look, type Rule, type RuleContext } from './rule.ts';
import { shortKeepsBurning } from './short-keeps-burning.ts';
import { shortOutlastsWire } from './short-outlasts-wire.ts';
import { standbyCurrent } from './standby-current.ts';
import { stripByLabel } from './strip-by-label.ts';
import { triggerOvercurrent } from './trigger-overcurrent.ts';
import { unfusedSource } from './unfused-source.ts';
import { unusedThrow } from './unused-throw.ts';
import { weakShort } from './weak-short.ts';
import { wireOverload } from './wire-overload.ts';
import { wrongTruthTable } from './wrong-truth-table.ts';

/** Every rule, in the order in which its findings are read: what burns first, then what breaks, then what annoys. */
export const RULES: readonly Rule[] = [
  fuseOverWire,
  unfusedSource,
  wireOverload,
  shortKeepsBurning,
  shortOutlastsWire,
  backFeed,
  parallelSources,
  parallelThrows,
  halfOfPair,
  noCoilSuppression,
  outputLimitUnknown,
  triggerOvercurrent,
  doesNotSettle,
  wrongTruthTable,
  halfLit,
  floatingLoad,
  openGround,
  oneSidedLoad,
  contactOverload,
  contactForLoad,
  fuseOverload,
  fuseVoltage,
  partVoltage,
  stripByLabel,
  fuseFarFromSource,
  weakShort,
  coilOnSwitch,
  coilInBetween,
  nearThreshold,
  relayRace,
  inrushOverContact,
  lowVoltageAtLoad,
  leftOnKeyOut,
  standbyCurrent,
  unusedThrow,
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
