package starter

// garments of the gallery as they begin: usual options, in cm [source.OwnChoice].
var garments = map[string]string{
	"blouse": `  - name: blouse
    bodice: {fit: easy, back: seam}
    sleeve: {}
    parts:
      - kind: collar
      - kind: cuff
`,
	"shirt": `  - name: shirt
    bodice: {dart: none, fit: shirt, yoke: 9, back: fold, front: opening, extension: 1.5, below_waist: 28}
    sleeve: {style: shirt}
    parts:
      - kind: shirt collar
      - kind: cuff
`,
	"princess dress": `  - name: princess dress
    bodice: {princess: shoulder, below_waist: 62}
    sleeve: {style: two-piece}
    parts:
      - kind: neck facing
`,
	"dress": `  - name: dress
    bodice: {fit: close, back: seam}
    sleeve: {reach: short}
    skirt: {shape: a-line, length: 60}
    parts:
      - kind: neck facing
`,
	"skirt": `  - name: skirt
    skirt: {shape: a-line, length: 62}
    parts:
      - kind: waistband
`,
	"circle skirt": `  - name: circle skirt
    skirt: {shape: half circle, length: 62}
    parts:
      - kind: waistband
`,
	"trousers": `  - name: trousers
    trousers: {pocket: side}
    parts:
      - kind: waistband
`,
	"kaftan": `  - name: kaftan
    straight_cut: {shape: kaftan, length: 125}
`,
	"apron": `  - name: apron
    straight_cut: {shape: apron, length: 70}
`,
	"bag": `  - name: bag
    straight_cut: {shape: bag, width: 36, length: 38, depth: 8}
`,
}
