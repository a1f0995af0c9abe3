import { schemas } from '../../components/schemas.ts';
import { valuePaths } from '../../components/values.ts';
import type { DocumentFile } from '../read/folder.ts';
import { closeDocument, openDocument, type ReadDocument } from '../read/open.ts';
import type { Problem } from '../read/source.ts';
import type { Content, Known } from './rule.ts';
import { rules } from './rules/index.ts';

export interface DocumentsChecked {
  documents: ReadDocument[];
  problems: Problem[];
}

/** Opens one document after the other, holds each against the rules, and keeps only what pages need of it. */
export function checkDocuments(files: Iterable<DocumentFile>, content: Content): DocumentsChecked {
  const documents: ReadDocument[] = [];
  const problems: Problem[] = [];
  for (const file of files) {
    const open = openDocument(file, problems);
    if (!open) continue;
    for (const rule of rules) if (rule.document) problems.push(...rule.document(open, content));
    documents.push(closeDocument(open));
  }
  return { documents, problems };
}

/** `Known` with the shipped components and their values. */
export function contentOf(known: Known, components: Content['components'] = schemas): Content {
  const paths = new Map<string, readonly string[]>();
  return {
    ...known,
    components,
    valuePaths: (id) => {
      let found = paths.get(id);
      if (!found) {
        const circuit = known.circuits.get(id);
        found = circuit ? valuePaths(circuit) : [];
        paths.set(id, found);
      }
      return found;
    },
  };
}
