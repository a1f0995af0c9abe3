import { type Example, type FailingExample, figure, type Rule } from './rule.ts';
import { sketch } from './sketch.ts';

/** C05: no contact of an input carries more than that input's limit. */
export const triggerOvercurrent: Rule = {
  id: 'trigger-overcurrent',
  neutralId: 'C05',
  severity: 'stop',
  title: 'Too much for the output',
  why: 'The output shuts down, sets a fault or dies; it is made for a coil, not for a lamp.',
  cure: 'Let the output work a relay with a coil it can drive, and take the load from a feed of its own.',
  source: 'common practice, no source',
  check(look) {
    return look.of('switch').flatMap((contact) => {
      const limitA = look.netlist.inputs.find((input) => input.id === contact.input)?.limitA;
      if (limitA === undefined) return [];
      const worst = look.worstCurrent(contact.id, limitA * (1 + 1e-9));
      if (worst === undefined) return [];
      return [
        {
          parts: [contact.id],
          states: worst.states,
          message:
            `${look.Name(contact.id)} carries ${figure(worst.value)} A ${look.stateWords(worst.state.inputs)}; ` +
            `${look.inputName(contact.input)} may carry ${figure(limitA)} A.`,
        },
      ];
    });
  },
};

export const passes: Example[] = [
  {
    title: 'a 90 ohm coil on a 0.3 A output',
    netlist: sketch(`
      source bat b 0 13.8
      relay k b k85 b k87 - 90
      switch door_c k85 0 door
      input door door 0.3
      load lamp k87 0 13.5 6`),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'the lamp itself on the output',
    netlist: sketch(`
      source bat b 0 13.8
      load lamp b p 13.5 6
      switch door_c p 0 door
      input door door 0.3`),
    messages: ['Switch door_c carries 2.3 A with door on; output door may carry 0.3 A.'],
  },
];
