package job

import (
	"github.com/goccy/go-yaml"
	"github.com/goccy/go-yaml/ast"
	"github.com/invopop/jsonschema"

	"ellwand/cmd/ellwand/strict"
	"ellwand/fabric/cloth"
	"ellwand/pieces/language"
)

// Shrinkage is what a cloth loses in its first wash, or the word none.
type Shrinkage struct {
	Warp     Text  `yaml:"warp" jsonschema_description:"share lost along the cloth: 4 %"`
	Weft     Text  `yaml:"weft" jsonschema_description:"share lost across the cloth: 2 %"`
	CutFirst YesNo `yaml:"cut_first" jsonschema_description:"yes: cut first and wash later, so that the pieces are cut larger; otherwise the cloth is wetted before cutting"`

	none bool
}

// UnmarshalYAML takes the keys, or none.
func (s *Shrinkage) UnmarshalYAML(node ast.Node) error {
	if strict.IsNone(node) {
		s.none = true
		return nil
	}
	type keys Shrinkage
	return yaml.NodeToValue(node, (*keys)(s))
}

// JSONSchemaExtend accepts none in place of the keys.
func (Shrinkage) JSONSchemaExtend(schema *jsonschema.Schema) {
	keys := *schema
	*schema = jsonschema.Schema{OneOf: []*jsonschema.Schema{{Const: strict.None}, &keys}}
}

// MayBeNone marks it for the shape of the file.
func (Shrinkage) MayBeNone() {}

// Repeat is the pattern of a cloth and what is matched on it.
type Repeat struct {
	Along      Measure `yaml:"along" jsonschema_description:"repeat along the warp, of stripes that run across the cloth"`
	Across     Measure `yaml:"across" jsonschema_description:"repeat across the cloth, of stripes that run along it; both make checks"`
	Match      []Text  `yaml:"match" jsonschema_description:"seams and notches to match, the most important first: centre front, side; all that can be kept together if not given"`
	SideBySide []Text  `yaml:"hang_side_by_side" jsonschema_description:"pieces that hang side by side, as curtains do: they, and their copies, are matched along the cloth at their lower edges, and across it the copies of each lie alike"`
	Even       YesNo   `yaml:"even" jsonschema_description:"the pattern looks the same turned end for end, as plain stripes do; otherwise no piece of a garment is turned against the others"`
	Centre     []Text  `yaml:"centre" jsonschema_description:"pieces whose centre lies on one line of the repeat across"`
	CentreLine Measure `yaml:"centre_line" jsonschema_description:"how far that line lies from the edge of the selvedge nearest to you"`
}

// Flaw is a place on the cloth that may not be used. Distances along are from
// the cut end, distances across from the edge of the selvedge nearest to the
// cutter, the cloth lying open, right side up.
type Flaw struct {
	Name    Text        `yaml:"name" jsonschema_description:"what it is: stain, faded edge"`
	At      []Measure   `yaml:"at" jsonschema:"minItems=2,maxItems=2" jsonschema_description:"centre of a round flaw: [along, across]"`
	Radius  Measure     `yaml:"radius" jsonschema_description:"of a round flaw"`
	Along   []Measure   `yaml:"along" jsonschema:"minItems=2,maxItems=2" jsonschema_description:"from and to along the cloth; alone, a band across all of it"`
	Across  []Measure   `yaml:"across" jsonschema:"minItems=2,maxItems=2" jsonschema_description:"from and to across the cloth; alone, a band along all of it"`
	Outline [][]Measure `yaml:"outline" jsonschema:"minItems=3" jsonschema_description:"corners of any other shape: [[along, across], ...]"`
}

// Remnant is a piece of a cloth that is there already: a length and a width,
// or an outline.
type Remnant struct {
	Name    Text        `yaml:"name" jsonschema_description:"what tells it apart: the one from the skirt"`
	Length  Measure     `yaml:"length" jsonschema_description:"along the warp"`
	Width   Measure     `yaml:"width" jsonschema_description:"across, from edge to edge"`
	Outline [][]Measure `yaml:"outline" jsonschema:"minItems=3" jsonschema_description:"its corners in turn when it is not a rectangle: [[along, across], ...]"`
	Flaws   []Flaw      `yaml:"flaws" jsonschema_description:"places on it that may not be used, measured from its own cut end"`
}

// rule is what a job says of a rule that pieces of a cloth keep; nil is nothing.
type rule interface {
	read(v values, path Path, name language.Sentence, out *cloth.Cloth)
}
