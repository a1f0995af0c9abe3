import { describeFault, type Fault, type Netlist } from '../../calc/index.ts';

/** A fault as it is said at the bench: contacts by their terminals, leads by their part. */
export function sayFault(netlist: Netlist, fault: Fault): string {
  return inTrade(describeFault(netlist, fault));
}

/** Names that only a netlist has, in the words of the trade. */
export const inTrade = (text: string): string =>
  text
    .replace(/\b([\w-]+)\.no\b/g, '$1 contact 30–87')
    .replace(/\b([\w-]+)\.nc\b/g, '$1 contact 30–87a')
    .replace(/\b([\w-]+)\.clamp\b/g, '$1 clamp')
    .replace(/\b([\w-]+)\.contact\b/g, '$1 contact')
    .replace(/\b([\w-]+)\.pigtail([+-])/g, (_, id: string, end: string) => `${id} lead ${end === '-' ? '−' : '+'}`);
