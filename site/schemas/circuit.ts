import { z } from 'zod';
import type { Circuit } from '../../calc/index.ts';
import { id, isoDate, line, quantity, sized } from './fields.ts';

const partId = z
  .string()
  .regex(/^[A-Za-z][A-Za-z0-9_-]*$/, 'must begin with a letter; letters, digits, hyphen and underscore follow');
const terminal = z
  .string()
  .regex(
    /^[A-Za-z][A-Za-z0-9_-]*(\.[A-Za-z0-9+-]+)?$/,
    'must be a terminal such as "F1.2", "K1.87a", "BAT.+" or a splice id',
  );
const name = z.string().regex(/^[a-z][A-Za-z0-9]*$/, 'must be a name such as "sideDoor"');

const base = {
  label: line.optional(),
  spec: line.optional(),
  join: z.record(z.string(), terminal).optional(),
};

const batteryPart = z.strictObject({
  kind: z.literal('battery'),
  ...base,
  volts: quantity.optional(),
  sourceOhm: quantity.optional(),
  chargeable: z.boolean().optional(),
  parallelOk: z.boolean().optional(),
});
const feedPart = z.strictObject({
  kind: z.literal('feed'),
  ...base,
  input: name.optional(),
  fuseA: quantity,
  from: partId.optional(),
});
const sinkPart = z.strictObject({
  kind: z.literal('sink'),
  ...base,
  input: name,
  inverted: z.boolean().optional(),
});
const fusePart = z.strictObject({
  kind: z.literal('fuse'),
  ...base,
  form: z.enum(['C', 'E', 'F', 'strip']).default('C'),
  ratingA: sized,
  ohm: quantity.optional(),
});
const switchPart = z.strictObject({
  kind: z.literal('switch'),
  ...base,
  input: name,
  changeover: z.boolean().optional(),
  inverted: z.boolean().optional(),
  maxA: quantity.optional(),
});
const relayPart = z.strictObject({
  kind: z.literal('relay'),
  ...base,
  form: z.enum(['make', 'changeover', 'break']),
  coilOhm: quantity,
  pullInV: quantity.optional(),
  dropOutV: quantity.optional(),
  contactOhm: quantity.optional(),
  maxA: z.strictObject({ make: quantity.optional(), break: quantity.optional() }),
  suppression: z.enum(['diode', 'resistor']).optional(),
  suppressionOhm: quantity.optional(),
  capped: z.boolean().optional(),
  sensing: z.boolean().optional(),
  pins: id.optional(),
});
const diodePart = z.strictObject({
  kind: z.literal('diode'),
  ...base,
  forwardV: quantity.optional(),
  maxA: quantity.optional(),
});
const resistorPart = z.strictObject({ kind: z.literal('resistor'), ...base, ohm: quantity });
const loadPart = z.strictObject({
  kind: z.enum(['lamp', 'load', 'strip', 'motor', 'buzzer', 'charger', 'heater', 'camera', 'socket']),
  ...base,
  model: z.enum(['resistive', 'constant-power', 'constant-current', 'strip']),
  ratedV: quantity,
  powerW: quantity.optional(),
  currentA: quantity.optional(),
  labelAPerM: quantity.optional(),
  lengthM: quantity.optional(),
  groupV: quantity.optional(),
  inrushA: quantity.optional(),
  inrushMs: quantity.optional(),
  onAboveFraction: z.number().min(0.05).max(1).optional(),
  dropFraction: z.number().min(0.005).max(0.2).optional(),
  bothWays: z.boolean().optional(),
  pigtail: z
    .strictObject({
      areaMm2: z.number().positive(),
      lengthM: z.number().positive(),
      insulationC: z.number().min(60).max(200).optional(),
    })
    .optional(),
  standbyMa: quantity.optional(),
});
const connectorPart = z.strictObject({
  kind: z.literal('connector'),
  ...base,
  poles: z.int().min(1).max(60),
  contactOhm: quantity.optional(),
  maxA: quantity.optional(),
});
const splicePart = z.strictObject({ kind: z.literal('splice'), ...base });
const chassisPart = z.strictObject({ kind: z.literal('chassis'), ...base, ohm: quantity.optional() });

export const partSchema = z.discriminatedUnion('kind', [
  batteryPart,
  feedPart,
  sinkPart,
  fusePart,
  switchPart,
  relayPart,
  diodePart,
  resistorPart,
  loadPart,
  connectorPart,
  splicePart,
  chassisPart,
]);

/** IEC 60757 codes, joined by a hyphen where a wire is striped. */
const COLOURS = 'BK|BN|RD|OG|YE|GN|BU|VT|GY|WH|PK|GD|TQ|SR';
export const wireSchema = z.strictObject({
  from: terminal,
  to: terminal,
  lengthM: quantity,
  areaMm2: sized,
  insulationC: z.number().min(60).max(200).optional(),
  ambientC: quantity.optional(),
  bundled: z.int().min(1).max(60).optional(),
  engineSpace: z.boolean().optional(),
  colour: z
    .string()
    .regex(new RegExp(`^(${COLOURS})(-(${COLOURS}))?$`), 'must be a colour code of IEC 60757 such as "RD" or "BK-WH"')
    .optional(),
  label: line.optional(),
  bothWays: z.boolean().optional(),
});

const jobValueSchema = z.strictObject({
  label: line,
  quantity: z.enum([
    'length',
    'current',
    'voltage',
    'power',
    'resistance',
    'temperature',
    'area',
    'charge',
    'fraction',
    'mass',
    'time',
    'count',
  ]),
  default: z.number(),
  min: z.number(),
  max: z.number(),
  step: z.number().positive(),
  measure: line.optional(),
});

const inputSchema = z.strictObject({
  label: line,
  kind: z.enum(['door', 'ignition', 'switch', 'push', 'signal']),
  off: line.optional(),
  on: line.optional(),
  limitA: quantity.optional(),
});

const intentSchema = z.strictObject({
  says: line,
  loads: z.record(
    partId,
    z.union([
      // "L1: master and (side or rear)" is short for { when: … }
      line.transform((when) => ({ when })),
      z.strictObject({
        when: line,
        ranges: z.array(z.strictObject({ when: line, minV: z.number(), maxV: z.number() })).optional(),
      }),
    ]),
  ),
  sequence: z.array(z.strictObject({ on: z.array(name), loads: z.array(partId) })).optional(),
  keyOut: z.record(partId, line).optional(),
  neverSettles: z.array(partId).optional(),
});

const signOffSchema = z.strictObject({
  rule: line,
  parts: z.array(z.string()).min(1),
  by: line,
  on: isoDate,
  reason: line,
});

/** content/circuits/*.yaml. The id is the file's name. */
export const circuitSchema = z.strictObject({
  title: line,
  systemV: z.union([z.literal(12), z.literal(24)]),
  supply: z.strictObject({
    restingV: quantity,
    chargingV: quantity,
    lowestV: quantity.optional(),
    sourceOhm: quantity,
  }),
  values: z.record(name, jobValueSchema).default({}),
  inputs: z.record(name, inputSchema).default({}),
  parts: z.record(partId, partSchema),
  wires: z.record(partId, wireSchema),
  intent: intentSchema,
  signOffs: z.array(signOffSchema).default([]),
});
export type CircuitData = z.infer<typeof circuitSchema>;

/** Ties the schema to the types that calc reads: this line does not compile when they part. */
export const circuitOf = (id: string, data: CircuitData): Circuit => ({ id, ...data });
