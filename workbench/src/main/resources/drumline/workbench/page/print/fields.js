// Which keys an element may have, read from the schema of an inquiry's text, and how they are asked for.

const PLACE_FORMS = {outside: 'outside-step', 'front-bore': 'bore-step', 'back-bore': 'bore-step', relations: 'relation'};

/** Places of the part in the order of the table, with their headings. */
export const PLACES = [
  {place: 'outside', title: 'Outside, front to back'},
  {place: 'front-bore', title: 'Bore from the front'},
  {place: 'back-bore', title: 'Bore from the back'},
  {place: 'features', title: 'Features'},
  {place: 'relations', title: 'Geometrical tolerances'},
];

/** The key as a person would write it: radial-depth is Radial depth. */
export function label(key) {
  const words = key.replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** Keys of an element: {key, type, choices, note, isRequired}. */
export function elementFields(schema, place, kind) {
  return fieldsOf(schema, PLACE_FORMS[place] ?? kind).filter(field => field.key !== 'kind' || place === 'relations');
}

/** Keys of a block such as bar, volumes or rates. */
export function fieldsOf(schema, name) {
  const form = schema.$defs[name];
  if (!form?.properties) return [];
  return Object.entries(form.properties).map(([key, property]) => field(schema, key, property, form.required ?? []));
}

/** One key that stands at the top, such as material. */
export function field(schema, key, property, required) {
  const type = property.$ref?.split('/').at(-1) ?? 'text';
  const full = property.$ref ? schema.$defs[type] : property;
  return {key, type, choices: full?.enum ?? null, note: full?.description ?? '', isRequired: required.includes(key), isPlain: !full?.properties && full?.type !== 'object' && full?.type !== 'array' && !full?.oneOf};
}

/** Kinds of feature that the schema knows, in its order. */
export function featureKinds(schema) {
  return schema.$defs.part.properties.features.items.oneOf.map(choice => choice.$ref.split('/').at(-1));
}

// What is offered while typing; anything the reader understands may be typed. Preferred numbers of common practice.
export const OFFERED = {
  tolerance: ['h6', 'h7', 'h8', 'h9', 'h11', 'H7', 'H8', 'H9', 'H11', 'f7', 'g6', 'js9', '±0.02', '±0.05', '±0.1', '+0.05/0'],
  roughness: ['Ra 0.4', 'Ra 0.8', 'Ra 1.6', 'Ra 3.2', 'Ra 6.3'],
  edge: ['none', 'break', '0.3 mm x 45°', '0.5 mm x 45°', '1 mm x 45°', '1 mm x 30°', 'R 0.4 mm', 'R 0.8 mm'],
  thread: ['M3-6H', 'M4-6H', 'M5-6H', 'M6-6g', 'M8-6g', 'M10-6g', 'M12x1.5-6g', 'M16x1.5-6g', 'M20x1.5-6g', 'G 1/8', 'G 1/4', 'G 3/8', 'G 1/2', '1/4-20 UNC-2A', '5/16-24 UNF-2A', '3/8-24 UNF-2A', '7/16-20 UNF-2A', '1/8-27 NPT', '1/4-18 NPT'],
  general: ['ISO 2768-f', 'ISO 2768-m', 'ISO 2768-c'],
  barTolerance: ['h8', 'h9', 'h10', 'h11', 'h12'],
  angle: ['0 deg', '45 deg', '90 deg', '120 deg', '180 deg', '270 deg'],
  currency: ['EUR', 'USD', 'GBP', 'CHF', 'JPY'],
};

/** What to offer for a field of an element; ids are those of the part's steps and features. */
export function offered(place, kind, {key, type}, ids) {
  if (key === 'step' || key === 'of' || (kind && place === 'relations' && key === 'to')) return ids;
  if (kind === 'thread' && key === 'size') return OFFERED.thread;
  if (key === 'thread') return OFFERED.thread;
  return OFFERED[type] ?? [];
}
