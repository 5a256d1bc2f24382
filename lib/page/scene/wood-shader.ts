import { MOST_BOARDS } from '../../derive/scene/scene-boards.ts';

/**
 * Wood as it grows: a color for every point of the board, in the frame of the part (x along the grain, mm). Rings lie
 * around the pith, so that flat faces, edges and end grain of one board belong together without any texture.
 */
export const WOOD_HEAD = `
#define MOST_BOARDS ${MOST_BOARDS}
uniform vec4 uBoards[MOST_BOARDS]; // far side, pith y, pith z, tone
uniform int uCount;
uniform float uSeed;
uniform vec3 uEarly;
uniform vec3 uLate;
uniform vec4 uFigure; // ring, contrast, pores, rays
uniform float uTint;
varying vec3 vWood;
varying vec3 vWoodNormal;

float woodHash(vec3 p) {
  p = fract(p * vec3(0.1031, 0.1030, 0.0973));
  p += dot(p, p.yxz + 33.33);
  return fract((p.x + p.y) * p.z);
}
float woodNoise(vec3 p) {
  vec3 i = floor(p);
  vec3 f = fract(p);
  f = f * f * (3.0 - 2.0 * f);
  vec2 o = vec2(0.0, 1.0);
  return mix(
    mix(mix(woodHash(i + o.xxx), woodHash(i + o.yxx), f.x), mix(woodHash(i + o.xyx), woodHash(i + o.yyx), f.x), f.y),
    mix(mix(woodHash(i + o.xxy), woodHash(i + o.yxy), f.x), mix(woodHash(i + o.xyy), woodHash(i + o.yyy), f.x), f.y),
    f.z);
}
vec3 woodColor(vec3 p, vec3 n) {
  vec4 board = uBoards[0];
  float number = 0.0;
  for (int k = 1; k < MOST_BOARDS; k++) {
    if (k >= uCount || p.y < board.x) break;
    board = uBoards[k];
    number += 1.0;
  }
  float seed = uSeed + 37.0 * number;
  float x = p.x + 997.0 * fract(seed * 0.137) * 9.0;
  // The tree is not quite straight: rings run out of a flat face as arches.
  vec2 bend = vec2(woodNoise(vec3(x * 0.0013, seed, 1.5)), woodNoise(vec3(x * 0.0017, seed, 7.5))) - 0.5;
  vec2 q = p.yz - board.yz + bend * vec2(46.0, 34.0);
  float r = length(q) + 5.0 * (woodNoise(vec3(x * 0.006, q * 0.025 + seed)) - 0.5);
  float t = r / uFigure.x;
  t += 1.6 * woodNoise(vec3(r * 0.045, seed, 3.5));
  float wide = fwidth(t);
  float ring = fract(t);
  float late = smoothstep(0.15, 0.86, ring) * (1.0 - smoothstep(0.9, 1.0, ring));
  late = mix(late, 0.4, smoothstep(0.3, 0.85, wide));
  // Several rings together are darker or lighter: what is left of the figure from afar.
  float years = woodNoise(vec3(t * 0.31, seed, 11.5));
  vec3 color = mix(uEarly, uLate, clamp(uFigure.y * (0.75 * late + 0.5 * years - 0.1), 0.0, 1.0));
  float pixel = fwidth(p.x) + fwidth(p.y) + fwidth(p.z);
  float near = 1.0 - smoothstep(0.5, 2.2, pixel);
  float end = smoothstep(0.5, 0.9, abs(n.x));
  float fiber = woodNoise(vec3(x * 0.012, p.yz * 0.35)) - 0.5;
  float fine = near * (woodNoise(vec3(x * 0.02, p.yz * 1.7)) - 0.5);
  color *= 1.0 + (1.0 - end) * (0.16 * fiber + 0.14 * fine);
  float pore = smoothstep(0.66, 0.86, woodNoise(vec3(x * 0.045, p.yz * 1.3 + 5.0))) * uFigure.z * (1.0 - 0.5 * ring);
  color *= 1.0 - pore * mix(0.1, 0.3, near);
  // Rays lie square to the rings: flecks where a face runs along them.
  vec2 out2 = normalize(q);
  float quarter = 1.0 - smoothstep(0.0, 0.4, abs(dot(n.yz, out2)));
  float ray = smoothstep(0.72, 0.9, woodNoise(vec3(x * 0.03, r * 0.12, 4.0 * atan(q.y, q.x) + seed)));
  color *= 1.0 + quarter * (1.0 - end) * ray * uFigure.w * 0.16;
  color *= 1.0 + 0.1 * (woodNoise(vec3(x * 0.0022, p.yz * 0.012 + seed)) - 0.5);
  color *= 1.0 + board.w * vec3(0.11, 0.125, 0.14);
  // End grain drinks oil and looks darker.
  color *= mix(vec3(1.0), vec3(0.74, 0.68, 0.62), end);
  return mix(color, vec3(0.12, 0.42, 0.86), 0.55 * uTint);
}
`;

/** A satin finish: at a flat angle the room is mirrored, brighter above. */
export const WOOD_SHEEN = `
{
  vec3 eye = normalize(vViewPosition);
  vec3 above = normalize((viewMatrix * vec4(0.0, 0.0, 1.0, 0.0)).xyz);
  float sky = smoothstep(-0.2, 0.95, dot(reflect(-eye, normal), above));
  float rim = 0.035 + 0.5 * pow(1.0 - clamp(dot(normal, eye), 0.0, 1.0), 5.0);
  outgoingLight += rim * sky * vec3(0.9, 0.88, 0.84) * 0.5;
}
`;
