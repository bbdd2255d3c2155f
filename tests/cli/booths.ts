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
/** Another skirt on the same desk, which drags. */
export const second = 'skirt Side { on Left  sides ends  drop 41in  length 10ft }\n';
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

/** A stool for two people of different size at one desk, and a second desk. */
export const shared = `booth "Larkfield Hall" { show in }
operator Noor { stature 5'3"  popliteal 15in  sitting-elbow 9in  standing-elbow 39in  thigh-clearance 6in }
operator Tobias { stature 5'10"  popliteal 17in  sitting-elbow 9in  standing-elbow 44in  thigh-clearance 6in }
operator Priya { stature 167cm  body female }
desk Left { width 66in  depth 27in  height 40in  top 1in }
desk Right { width 48in  depth 27in  height 40in  top 1in }
stool Tall { seat 28in..32in  seat-depth 16in  base 20in  foot-ring 18in below seat }
workstation Sound { desk Right  stool Tall  operators Noor, Tobias  posture sit, stand  task controls }
workstation Words { desk Left  stool Tall  operators Priya }
`;
