// Questions that stop the work: a dialogue of the browser's own, with the answer as a promise.

/**
 * Asks; answers with the value of the button pressed, or null where it was closed.
 *
 * @param build fills the dialogue's body with nodes; gets the dialogue
 * @param answers buttons: {value, words, isMain}
 */
export function askDialog({title, build, answers, isWide = false}) {
  const dialog = document.createElement('dialog');
  dialog.className = isWide ? 'dialog is-wide' : 'dialog';
  const form = document.createElement('form');
  form.method = 'dialog';
  const heading = document.createElement('h2');
  heading.id = `dialog-${Math.random().toString(36).slice(2)}`;
  heading.textContent = title;
  dialog.setAttribute('aria-labelledby', heading.id);
  const body = document.createElement('div');
  body.className = 'dialog-body';
  const row = document.createElement('div');
  row.className = 'dialog-answers';
  for (const {value, words, isMain, isPlain} of answers) {
    const button = document.createElement('button');
    button.value = value;
    button.textContent = words;
    if (isMain) button.className = 'main';
    if (isPlain) button.className = 'plain';
    if (value === '') {
      button.type = 'button';
      button.addEventListener('click', () => dialog.close(''));
    }
    row.append(button);
  }
  form.append(heading, body, row);
  dialog.append(form);
  build(body, dialog);
  document.body.append(dialog);
  const before = document.activeElement;
  dialog.showModal();
  return new Promise(resolve => dialog.addEventListener('close', () => {
    dialog.remove();
    before?.focus?.();
    resolve(dialog.returnValue || null);
  }, {once: true}));
}

/** A paragraph as a node. */
export function paragraph(words, className = '') {
  const node = document.createElement('p');
  node.textContent = words;
  node.className = className;
  return node;
}

/** A field with its label; `form.elements[name]` holds it. */
export function field(label, name, {value = '', type = 'text', required = false, note = ''} = {}) {
  const node = document.createElement('label');
  node.className = 'field';
  const input = document.createElement('input');
  input.name = name;
  input.type = type;
  input.required = required;
  if (type !== 'file') input.value = value;
  const words = document.createElement('span');
  words.textContent = label;
  node.append(words, input);
  if (note) node.append(Object.assign(document.createElement('small'), {className: 'soft', textContent: note}));
  return node;
}
