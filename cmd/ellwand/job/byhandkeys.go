package job

import "ellwand/fabric/lay"

// HandLaid are pieces that a hand has laid in one width and lay of a cloth.
type HandLaid struct {
	Width    Measure          `yaml:"width" jsonschema:"required" jsonschema_description:"width of the cloth that they lie on"`
	Lay      Choice[lay.Kind] `yaml:"lay" jsonschema_description:"how the cloth is spread"`
	FoldedIn Measure          `yaml:"folded_in" jsonschema_description:"in the lay with one selvedge folded in: how far the fold lies from the edge that is folded in"`
	Pieces   []HandPiece      `yaml:"pieces" jsonschema:"required" jsonschema_description:"where each of them lies"`
}

// HandPiece is a piece where a hand has laid it.
type HandPiece struct {
	Piece    Text      `yaml:"piece" jsonschema:"required" jsonschema_description:"name of the piece"`
	Garment  Text      `yaml:"garment" jsonschema_description:"the garment that it is of; of several alike with its number: blouse 2"`
	Size     Text      `yaml:"size" jsonschema_description:"its size, in a job by sizes"`
	Copy     Count     `yaml:"copy" jsonschema_description:"which of several alike it is; 1 if not given"`
	At       []Measure `yaml:"at" jsonschema:"required" jsonschema_description:"where the corner lies that it is drawn from: [from the cut end, from the edge of the usable width or the fold]"`
	Turn     Text      `yaml:"turn" jsonschema_description:"by how many degrees it is turned against the clock; 0 if not given"`
	FaceDown YesNo     `yaml:"face_down" jsonschema_description:"it lies face down (mirrored along the warp)"`
	OnFold   YesNo     `yaml:"on_fold" jsonschema_description:"its fold edge lies on the fold of the cloth"`
	OnOpen   YesNo     `yaml:"on_open" jsonschema_description:"in a lay of two parts: it lies on the open one, of one ply"`
}
