// Two windows changed one inquiry: nothing was lost, and the person says which shall stand.
import {get, inquiryPath} from '../api.js';
import {when} from '../format.js';
import {differences} from './differences.js';
import {askDialog, paragraph} from './dialog.js';

/** Answers 'mine' or 'theirs'. Closing the dialogue takes theirs: what is stored stays stored. */
export async function askWhichToKeep(inquiryId, stale, mine, expectedRevision) {
  const both = document.createElement('div');
  both.className = 'both';
  both.hidden = true;
  const choice = await askDialog({
    title: 'Somebody changed this inquiry since',
    isWide: true,
    build(body) {
      body.append(
        paragraph(`${stale.changedBy} made revision ${stale.presentRevision}, ${when(stale.changedAt)}. Yours was not saved; nothing is lost.`),
        paragraph(isText(mine) ? 'Yours is the whole text you wrote.' : `Yours: ${mine || 'one change'}.`, 'soft'),
        both,
        lookButton(both, inquiryId, stale, mine, expectedRevision),
      );
    },
    answers: [
      {value: 'theirs', words: 'Take theirs'},
      {value: 'mine', words: 'Keep mine', isMain: true},
    ],
  });
  return choice === 'mine' ? 'mine' : 'theirs';
}

const isText = mine => mine.includes('\n');

function lookButton(both, inquiryId, stale, mine, expectedRevision) {
  const button = document.createElement('button');
  button.type = 'button';
  button.textContent = 'Look at both';
  button.addEventListener('click', async () => {
    button.disabled = true;
    const [before, theirs] = await Promise.all([
      get(inquiryPath(inquiryId, 'revisions', String(expectedRevision))),
      get(inquiryPath(inquiryId, 'revisions', String(stale.presentRevision))),
    ]);
    both.append(column(`Theirs: revision ${stale.presentRevision}`, differences(before.text, theirs.text)));
    both.append(isText(mine)
      ? column('Yours', differences(before.text, mine))
      : column('Yours', [{kind: 'added', text: mine}]));
    both.hidden = false;
    button.hidden = true;
  });
  return button;
}

function column(title, lines) {
  const node = document.createElement('section');
  node.append(Object.assign(document.createElement('h3'), {textContent: title}));
  const list = document.createElement('pre');
  list.tabIndex = 0;
  for (const line of lines) {
    list.append(Object.assign(document.createElement('span'), {
      className: `diff-${line.kind}`,
      textContent: `${{added: '+', removed: '\u2212', gap: '…'}[line.kind] ?? ' '} ${line.text}\n`,
    }));
  }
  if (!lines.length) list.textContent = 'The text is the same; the layout was changed.';
  node.append(list);
  return node;
}
