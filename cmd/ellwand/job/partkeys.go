package job

import (
	"ellwand/draft/part"
)

// Part asks for a smaller piece that is drafted to fit the seams it joins.
type Part struct {
	Kind     Choice[part.Kind]  `yaml:"kind" jsonschema:"required" jsonschema_description:"what it is"`
	Name     Text               `yaml:"name" jsonschema_description:"name of the piece, in place of the kind"`
	Cloth    Text               `yaml:"cloth" jsonschema_description:"cloth it is cut from; the garment's if not given"`
	Depth    Measure            `yaml:"depth" jsonschema_description:"finished depth of a collar (of a shirt collar its fall), facing, cuff, waistband, belt, tie or placket; the width that a bias strip is cut to; height of a patch pocket; finished length of a skirt or panel"`
	Length   Measure            `yaml:"length" jsonschema_description:"finished length along the seam; of all bias strips joined; of the slit of a placket; of the opening of a pocket bag; width of a patch pocket; worked out or usual if not given"`
	Fullness Text               `yaml:"fullness" jsonschema_description:"how many times its finished length a skirt is gathered from; 2 if not given"`
	Stand    Measure            `yaml:"stand" jsonschema_description:"depth of the stand of a shirt collar; 3 cm if not given"`
	Overlap  Measure            `yaml:"overlap" jsonschema_description:"how far front and back overlap at the shoulder tip when a flat collar is drawn on them; 1.5 cm if not given"`
	Shape    Choice[part.Shape] `yaml:"shape" jsonschema_description:"lower edge of a patch pocket; square if not given"`
	Grain    Choice[part.Grain] `yaml:"grain" jsonschema_description:"how a straight strip lies, such as a waistband: lengthwise (its length along the warp), crosswise (from selvedge to selvedge) or either, as takes less cloth; not given, it lies as its kind is drawn"`
	Joins    Count              `yaml:"joins" jsonschema_description:"by how many seams across it a straight strip is pieced together from equal lengths; none if not given"`
	Of       Text               `yaml:"of" jsonschema_description:"the piece that a facing is drawn from: front skirt"`
	Edge     Text               `yaml:"edge" jsonschema_description:"the edge that a facing faces: waist"`
}

// Lining asks for the lining of drafted pieces.
type Lining struct {
	Of        []Text  `yaml:"of" jsonschema:"required,minItems=1" jsonschema_description:"the pieces that are lined, or a part for all its pieces; front bodice means all its panels, middle front bodice that one alone"`
	Cloth     Text    `yaml:"cloth" jsonschema_description:"cloth it is cut from; the garment's if not given"`
	Shorter   Measure `yaml:"shorter" jsonschema_description:"how much shorter than the shell it ends at the hems; 2 cm if not given"`
	BackPleat Measure `yaml:"back_pleat" jsonschema_description:"how much wider each half is at the centre back, for a pleat of ease; none if not given"`
}

// Interfacing asks for the interfacing of drafted pieces.
type Interfacing struct {
	Of     []Text  `yaml:"of" jsonschema:"required,minItems=1" jsonschema_description:"the pieces that are interfaced, named as for a lining"`
	Cloth  Text    `yaml:"cloth" jsonschema_description:"cloth it is cut from; the garment's if not given"`
	Reduce Measure `yaml:"reduce" jsonschema_description:"how much less than the piece's each allowance is; it ends at the seam line, without allowances, if not given"`
	Cut    Count   `yaml:"cut" jsonschema_description:"how many are cut of each; as many as of the piece if not given"`
}
