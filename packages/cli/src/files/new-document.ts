import { parseHTML } from 'linkedom';

/** A new, empty document to build a page or a picture in: nodes without a browser. */
export function newDocument(): Document {
  return parseHTML('<!doctype html><html lang="en"><head></head><body></body></html>').document;
}
