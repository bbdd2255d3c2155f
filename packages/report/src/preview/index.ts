export { formatLength, pieceKey, pieceOfKey, type DisplayUnit } from '@boothwright/fit';
export { drawingStyles } from '../drawings/styles.js';
export { VerdictMark, VerdictShapes, verdictStyles } from '../parts/verdict.js';
export { tellAnswer } from '../telling/answer.js';
export { percent, postureWord, verdictWords } from '../words.js';
export { decidedBy } from './decided.js';
export { LiveDrawing, type LiveDrawingProps } from './live-drawing.js';
export { calledOf } from './targets.js';
export { viewsOf, type StationViews, type View, type Views } from './views.js';
