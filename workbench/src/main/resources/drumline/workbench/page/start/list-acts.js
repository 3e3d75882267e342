// What can be done with the list: begin, bring in, copy, put away.
import {inquiryPath, send, sendFile} from '../api.js';
import {askDialog, field, paragraph} from '../parts/dialog.js';
import {go, leafAddress} from '../places.js';
import {say} from '../say.js';
import {settings} from '../settings.js';

/** Asks for a title and begins a new inquiry from the template. */
export async function startNew() {
  const title = field('Title', 'title', {required: true, note: 'Such as the part’s name on the print.'});
  const units = unitsField();
  const answer = await askDialog({
    title: 'New inquiry',
    build: body => body.append(title, units),
    answers: [{value: '', words: 'Cancel', isPlain: true}, {value: 'begin', words: 'Begin', isMain: true}],
  });
  if (answer !== 'begin') return;
  const made = await send('POST', '/inquiries', {
    from: 'template',
    title: title.querySelector('input').value.trim(),
    units: units.querySelector('select').value,
  });
  go(leafAddress(made.id, 'print'));
}

function unitsField() {
  const node = document.createElement('label');
  node.className = 'field';
  node.append(Object.assign(document.createElement('span'), {textContent: 'Units of the print'}));
  const select = document.createElement('select');
  select.append(new Option('Metric: mm, °C, N', 'metric'), new Option('Inch', 'inch'));
  select.value = settings.units;
  node.append(select);
  return node;
}

async function chooseFile(title, words, accept) {
  const file = field('File', 'file', {type: 'file', required: true});
  const input = file.querySelector('input');
  input.accept = accept;
  const answer = await askDialog({
    title,
    build: body => body.append(paragraph(words), file),
    answers: [{value: '', words: 'Cancel', isPlain: true}, {value: 'bring', words: 'Bring in', isMain: true}],
  });
  return answer === 'bring' ? input.files[0] ?? null : null;
}

/** Brings in an inquiry's text; one with errors is taken too, and shows them. */
export async function bringIn() {
  const file = await chooseFile('Bring in an inquiry', 'A text file as the program takes it out and the command line reads it. One with errors is taken as well; nothing is lost.', '.yaml,.yml,.txt');
  if (!file) return;
  const made = await send('POST', '/inquiries', {from: 'text', text: await file.text()});
  go(leafAddress(made.id, 'print'));
}

/** Reads a solid and makes an inquiry of what it says. */
export async function bringInStep() {
  const file = await chooseFile('From a STEP file', 'Steps and bores are read from the solid; tolerances, roughness and threads are yours to add.', '.step,.stp,.p21');
  if (!file) return;
  const made = await sendFile('/import/step', file);
  go(leafAddress(made.id, 'print'));
}

/** A copy, to try something on. */
export async function duplicate(inquiry) {
  const made = await send('POST', '/inquiries', {from: 'inquiry', inquiryId: inquiry.id, title: `${inquiry.name}, copy`});
  say(`${made.name} was made.`);
}

/** Puts an inquiry away ('archive') or takes it out again ('desk'). */
export async function putPlace(inquiry, place) {
  await send('POST', inquiryPath(inquiry.id, 'archive'), {place});
  say(place === 'archive' ? `${inquiry.name} is put away.` : `${inquiry.name} is back among the open ones.`);
}
