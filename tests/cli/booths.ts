/** Small invented booths that the command-line tests run on. */

export const skirted = (drop: string, more = '') => `booth "Larkfield Hall" { show in }
desk Left { width 60in  depth 27in  height 40in }
skirt Front { on Left  sides front  drop ${drop}  length 10ft }
${more}`;

/** A hem one inch above the floor. */
export const good = skirted('39in');
/** The hem drags an inch. */
export const dragging = skirted('41in');
export const accepted = skirted('41in', 'accept skirt-drop because "hemmed on site"\n');
/** A length without its unit, on line 3. */
export const faulty = skirted('39');
/** Pieces for other files. */
export const furniture = `desk Shared { width 60in  depth 27in  height 40in }
`;

export const seated = `booth "Larkfield Hall" { show in  limits us }
room { width 40ft  depth 66ft  height 14ft }
operator Noor { stature 5'3"  popliteal 15in  sitting-elbow 9in }
operator Tobias { stature 6'1" }
desk Right { width 48in  depth 27in  height 40in  top 1in }
place Right at 14ft, 6ft
stool Tall { seat 28in..32in  seat-depth 16in  base 20in  foot-ring 12in }
workstation Sound { desk Right  stool Tall  operators Noor, Tobias  posture sit, stand  task controls }
walkway Behind { between booth and back-wall  serves 20 }
`;
