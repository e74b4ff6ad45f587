/** The parts of Observable Plot that our charts are drawn with: a chunk of its own, loaded when the first chart comes near. */
export { axisX, axisY, dot, line, plot, rect, ruleX, ruleY, text } from '@observablehq/plot';
