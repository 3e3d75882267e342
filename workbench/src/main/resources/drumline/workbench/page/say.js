// One voice for what happens without being looked at: a polite live region, also shown for a moment.

let region;
let clearing;

/** Says it to a screen reader and shows it at the foot of the page; a wrong one stays longer. */
export function say(words, {isWrong = false} = {}) {
  if (!region) {
    region = document.createElement('div');
    region.className = 'said';
    region.setAttribute('role', 'status');
    document.body.append(region);
  }
  region.classList.toggle('is-wrong', isWrong);
  region.textContent = words;
  region.hidden = false;
  clearTimeout(clearing);
  clearing = setTimeout(() => (region.hidden = true), isWrong ? 12000 : 4000);
}
