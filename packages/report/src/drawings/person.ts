import type { BodySketch, SidePoint } from '@boothwright/fit';
import type { Point, Shape } from './drawing.js';
import { between, ellipse, limb } from './geometry.js';
import { disc, line, silhouette } from './shapes.js';

/** How thick limbs are drawn, millimetres. They measure nothing. */
const NECK = 48;
const UPPER_ARM = 46;
const ELBOW = 36;
const WRIST = 25;
const FINGERTIPS = 11;
const KNEE = 60;
const ANKLE = 36;
const FOOT = 27;
const TOES = 20;
const HEAD = { ahead: 92, up: 113 };
const JOINT = 13;

/** A jointed figure from the side, facing right: the far parts first, the arm last. */
export function personShapes(body: BodySketch): readonly Shape[] {
  const { head, nose } = headOf(body);
  const shoulder = lowered(body.shoulder, UPPER_ARM);
  const elbow = raised(body.elbow, ELBOW);
  const hand = raised(body.hand, FINGERTIPS);
  const wrist = between(elbow, hand, 0.62);
  const hip = point(body.hip);
  const neck = point(body.neck);
  const knee = point(body.knee);
  const ankle = point(body.ankle);
  const heel = raised({ x: body.heel.x + FOOT, z: body.heel.z }, FOOT);
  const toe = raised({ x: body.toe.x - TOES, z: body.toe.z }, TOES);
  const girth = Math.min(body.trunk, 300) / 2;
  const whole = [
    [ankle, heel, toe],
    limb(lowered(body.neck, 20), between(neck, { x: head.x + 12, y: head.y - 40 }, 0.9), NECK, NECK * 0.9),
    ellipse(head, HEAD.ahead, HEAD.up),
    nose,
    limb(hip, between(hip, neck, 0.8), girth, girth * 0.86),
    limb(between(hip, neck, 0.8), lowered(body.neck, 40), girth * 0.86, girth * 0.5),
    limb(hip, knee, body.thigh / 2, KNEE),
    limb(knee, ankle, KNEE, ANKLE),
    limb(ankle, heel, ANKLE, FOOT),
    limb(heel, toe, FOOT, TOES),
    limb(ankle, { x: toe.x - 25, y: toe.y + 4 }, ANKLE, TOES + 4),
  ];
  const arm = [
    limb(shoulder, elbow, UPPER_ARM, ELBOW),
    limb(elbow, wrist, ELBOW, WRIST),
    limb(wrist, hand, WRIST, FINGERTIPS),
  ];
  return [
    silhouette(whole, 'medium', 'fill-body'),
    silhouette(arm, 'thin', 'fill-body'),
    ...[shoulder, elbow, hip, knee].map((joint) => disc(joint, JOINT, 'fill-paper', 'thin')),
    line([{ x: body.eye.x - 26, y: body.eye.z }, point(body.eye)], 'medium'),
  ];
}

/** Every outline runs anticlockwise: two that overlap are filled as one. */
function headOf({ crown, eye }: BodySketch) {
  const head = { x: crown.x, y: crown.z - HEAD.up };
  const front = eye.x + 9;
  return {
    head,
    nose: [
      { x: front - 14, y: eye.z - 56 },
      { x: front + 16, y: eye.z - 44 },
      { x: front - 12, y: eye.z - 6 },
    ],
  };
}

export function point({ x, z }: SidePoint): Point {
  return { x, y: z };
}

function raised({ x, z }: SidePoint, by: number): Point {
  return { x, y: z + by };
}

function lowered({ x, z }: SidePoint, by: number): Point {
  return { x, y: z - by };
}
