/** The look of the page: that of the report, which it shows in a frame, and its own desk around it. */
import { STYLE } from '../explain/html/style.js';
import desk from './page.css';

export default { report: STYLE, page: `${STYLE}${desk}` };
