/** A booth that can be read and measured: 62in from the wall to the desk, 19in of them for the occupied seat. */
export const corner = `booth "Back corner" { show in  limits us }
room { width 30ft  depth 44ft }
operator Noor { stature 5'3" }
desk Table { width 60in  depth 27in  height 40in }
stool Tall { seat 26in..32in  foot-ring 15in below seat }
workstation Sound { desk Table  stool Tall  operators Noor  posture sit, stand }
place Table at 10ft, 62in
walkway Behind { between booth and back-wall  serves 40 }
`;
