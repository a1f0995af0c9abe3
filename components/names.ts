/** The components an author may place, by name. The lists of markup, models and schemas are checked against this one. */
export const COMPONENT_NAMES = ['FuseSizer', 'GaugeChooser', 'Value'] as const;
export type ComponentName = (typeof COMPONENT_NAMES)[number];
