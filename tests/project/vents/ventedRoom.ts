/** A small room with one vent in and one out, in the document's form. */
export const ventedRoom = () => ({
  format: 'lullwright/project@1',
  name: 'Vented room',
  assemblies: {
    wall: { name: 'Wall', layers: [{ kind: 'board', material: 'osb', thickness_mm: 18 }] },
    box: { name: 'Box of two boards', layers: [{ kind: 'board', material: 'osb', thickness_mm: 22 }] },
    leaf: { name: 'Leaf', layers: [{ kind: 'board', material: 'osb', thickness_mm: 40 }] },
  },
  surfaces: [
    {
      id: 'north',
      name: 'North wall',
      kind: 'wall',
      width_m: 5,
      height_m: 2.4,
      assembly: 'wall',
      openings: [
        { id: 'in', name: 'Fresh air', kind: 'vent', width_m: 0.13, height_m: 0.13, path: 'supply' },
        { id: 'out', name: 'Used air', kind: 'vent', width_m: 0.13, height_m: 0.13, path: 'extract' },
        { id: 'door', name: 'Door', kind: 'door', width_m: 0.9, height_m: 2, assembly: 'leaf' },
      ],
    },
    { id: 'floor', name: 'Floor', kind: 'floor', width_m: 5, height_m: 4, assembly: 'leaf' },
  ],
  vents: [
    {
      id: 'supply',
      name: 'Supply',
      opening: 'in',
      direction: 'supply',
      elements: [
        { kind: 'grille', section: { shape: 'round', diameter_mm: 200 }, free_percent: 70 },
        {
          kind: 'box',
          length_m: 0.6,
          width_m: 0.4,
          height_m: 0.2,
          partitions: [{ at_m: 0.294, gap_mm: 150, side: 'far' }],
          lining: { material: 'mineral-wool-45', thickness_mm: 25 },
          ports: [
            { side: 'left', at_m: 0.2, section: { shape: 'round', diameter_mm: 125 } },
            { side: 'right', at_m: 0.2, section: { shape: 'round', diameter_mm: 125 } },
          ],
          casing: 'box',
        },
        { kind: 'duct', section: { shape: 'round', diameter_mm: 125 }, length_m: 0.3 },
        {
          kind: 'fan',
          section: { shape: 'round', diameter_mm: 125 },
          curve: [
            { flow_L_s: 0, pressure_Pa: 150 },
            { flow_L_s: 40, pressure_Pa: 110 },
            { flow_L_s: 80, pressure_Pa: 0 },
          ],
        },
      ],
    },
    {
      id: 'extract',
      name: 'Extract',
      opening: 'out',
      direction: 'extract',
      elements: [
        {
          kind: 'duct',
          section: { shape: 'round', diameter_mm: 125 },
          length_m: 1,
          lining: { material: 'mineral-wool-45', thickness_mm: 50 },
          place: 'inside',
          wall_kg_m2: 15,
        },
        { kind: 'duct', section: { shape: 'round', diameter_mm: 125 }, length_m: 0.3 },
        { kind: 'cowl', section: { shape: 'round', diameter_mm: 125 } },
      ],
    },
  ],
  air: {
    people: [{ name: 'Band', count: 3, activity: 'playing-standing' }],
    session: [
      { name: 'Playing', minutes: 50 },
      { name: 'Break', minutes: 10, people_percent: 0, door: 'open' },
      { name: 'Playing', minutes: 50 },
    ],
    equipment_W: 400,
  },
});
