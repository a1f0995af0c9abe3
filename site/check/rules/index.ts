import type { Rule } from '../rule.ts';
import { avoidedWord } from './avoided-word.ts';
import { circuitParts } from './circuit-parts.ts';
import { circuitProof } from './circuit-proof.ts';
import { component } from './component.ts';
import { deadLink } from './dead-link.ts';
import { emptyDocument } from './empty-document.ts';
import { image } from './image.ts';
import { javascript } from './javascript.ts';
import { jobValues } from './job-values.ts';
import { placement } from './placement.ts';
import { quotedTag } from './quoted-tag.ts';
import { refers } from './refers.ts';
import { sameId } from './same-id.ts';
import { sameNumber } from './same-number.ts';
import { skeleton } from './skeleton.ts';
import { titleHeading } from './title-heading.ts';
import { unknownName } from './unknown-name.ts';

export const rules: readonly Rule[] = [
  avoidedWord,
  circuitParts,
  circuitProof,
  component,
  deadLink,
  emptyDocument,
  image,
  javascript,
  jobValues,
  placement,
  quotedTag,
  refers,
  sameId,
  sameNumber,
  skeleton,
  titleHeading,
  unknownName,
];
