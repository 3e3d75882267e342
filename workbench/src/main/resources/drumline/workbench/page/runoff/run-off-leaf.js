// Run-off: does it hold? Says plainly what the program can and cannot judge.
import {html} from 'lit';
import {get, inquiryPath} from '../api.js';
import {PageElement} from '../parts/element.js';
import {empty, failed, loading} from '../parts/states.js';

class RunOffLeaf extends PageElement {
  static properties = {open: {attribute: false}, revision: {}, runOff: {state: true}, error: {state: true}};

  constructor() {
    super();
    this.open = null;
    this.runOff = null;
    this.error = null;
  }

  willUpdate(changed) {
    if (changed.has('revision')) this.load();
  }

  async load() {
    try {
      this.runOff = await get(inquiryPath(this.open.id, 'run-off'));
      this.error = null;
    } catch (error) {
      this.error = error;
    }
  }

  render() {
    if (this.error && !this.runOff) return failed(this.error, () => this.load());
    if (!this.runOff) return loading('Looking for a run-off …');
    return html`${empty('No run-off can be judged here yet', this.runOff.words)}
      <p class="soft">What will stand here: measurements by spindle, piece and characteristic; capability within and between spindles;
        the verdict, and by how much each spindle and tool is off. Until then judge the acceptance with your own records, as agreed with the machine’s maker.</p>`;
  }
}

customElements.define('run-off-leaf', RunOffLeaf);
