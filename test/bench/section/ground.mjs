/** The section that is timed: topsoil on clay with a sand seam, a gravel ring and blanket, one pipe, rain of 1 mm a day. */
const soil = (across, sorptive, down = across) => ({
  across,
  down,
  sorptive,
  drainable: 0.05,
  storage: 1e-5,
});
const clay = soil(1e-8, 1, 5e-9);
const gravel = soil(1e-2, 36);

export const ground = {
  outline: [
    { x: -1.5, z: 0 },
    { x: -1.2, z: -1 },
    { x: 1.2, z: -1 },
    { x: 1.5, z: 0 },
  ],
  pond: -1,
  surface: [
    { x: -8, z: 0 },
    { x: 8, z: 0 },
  ],
  layers: [
    { thickness: 0.3, soil: soil(1e-6, 12) },
    { thickness: 2, soil: clay },
    { thickness: 0.2, soil: soil(1e-5, 36) },
    { thickness: 1, soil: clay },
  ],
  base: -4,
  ring: { width: 0.15, soil: gravel },
  blanket: [{ thickness: 0.15, soil: gravel }],
  pipes: [{ x: 0, z: -1.1, radius: 0.05 }],
  far: { left: -0.3, right: -0.3 },
  rain: 1e-3 / 86400,
};
