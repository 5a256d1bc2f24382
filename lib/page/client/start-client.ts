import { showPoster } from './show-poster.ts';
import { showPreview } from './show-preview.ts';

// A picture that is there already comes first; light and shadow take their time.
showPoster();
requestAnimationFrame(() => setTimeout(showPreview));
