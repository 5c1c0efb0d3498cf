package patternfile

import (
	"reflect"

	"github.com/goccy/go-yaml"
	"github.com/goccy/go-yaml/ast"
	"github.com/invopop/jsonschema"

	"ellwand/cmd/ellwand/strict"
)

// Values that may be written in several shapes.

// Point is [x, y]: x to the right, y up.
type Point []Measure

// JSONSchema asks for two lengths.
func (Point) JSONSchema() *jsonschema.Schema {
	two := uint64(2)
	return &jsonschema.Schema{Type: "array", Items: &jsonschema.Schema{Ref: "#/$defs/Measure"}, MinItems: &two,
		MaxItems: &two}
}

// Cut is a number, or one for each cloth.
type Cut struct {
	One Count
	By  map[string]Count
}

// Shapes that it may be written in.
func (Cut) Shapes() []reflect.Type {
	return []reflect.Type{reflect.TypeFor[Count](), reflect.TypeFor[map[string]Count]()}
}

// UnmarshalYAML takes either shape.
func (c *Cut) UnmarshalYAML(node ast.Node) error {
	if isMapping(node) {
		return yaml.NodeToValue(node, &c.By)
	}
	c.One = Count(strict.Written(node))
	return nil
}

// JSONSchema accepts either shape.
func (Cut) JSONSchema() *jsonschema.Schema {
	return &jsonschema.Schema{OneOf: []*jsonschema.Schema{Count("").JSONSchema(),
		{Type: "object", AdditionalProperties: Count("").JSONSchema()}}}
}

// Allowance is a text for all edges, or one for each.
type Allowance struct {
	One    Text
	ByEdge map[string]Text
}

// Shapes that it may be written in.
func (Allowance) Shapes() []reflect.Type {
	return []reflect.Type{reflect.TypeFor[Text](), reflect.TypeFor[map[string]Text]()}
}

// UnmarshalYAML takes either shape.
func (a *Allowance) UnmarshalYAML(node ast.Node) error {
	if isMapping(node) {
		return yaml.NodeToValue(node, &a.ByEdge)
	}
	a.One = Text(strict.Written(node))
	return nil
}

// JSONSchema accepts either shape.
func (Allowance) JSONSchema() *jsonschema.Schema {
	text := Text("").JSONSchema()
	return &jsonschema.Schema{OneOf: append(text.OneOf, &jsonschema.Schema{Type: "object", AdditionalProperties: text})}
}

// Node is a point of an outline: [x, y] for a corner, or with more to say of it.
type Node struct {
	Corner Point   `yaml:"corner" jsonschema_description:"a corner: [x, y]"`
	Curve  Point   `yaml:"curve" jsonschema_description:"a point that the line passes smoothly, in place of a corner"`
	Edge   Text    `yaml:"edge" jsonschema_description:"name of the edge that begins at the corner: side, skirt hem, centre front; a number if not given. A bend in an edge is a corner of the same name"`
	Arc    Measure `yaml:"arc" jsonschema_description:"the way to the next point is an arc of a circle, whose middle lies so far to the right of the straight way; negative to the left"`
	Bezier []Point `yaml:"bezier" jsonschema_description:"the way to the next point is a Bezier curve with these two control points"`
}

// nodeKeys are the keys of a point.
type nodeKeys Node

// Shapes that it may be written in.
func (Node) Shapes() []reflect.Type {
	return []reflect.Type{reflect.TypeFor[nodeKeys](), reflect.TypeFor[[]Measure]()}
}

// UnmarshalYAML takes either shape.
func (n *Node) UnmarshalYAML(node ast.Node) error {
	if isMapping(node) {
		return yaml.NodeToValue(node, (*nodeKeys)(n))
	}
	return yaml.NodeToValue(node, &n.Corner)
}

// JSONSchema accepts either shape.
func (Node) JSONSchema() *jsonschema.Schema {
	return &jsonschema.Schema{OneOf: []*jsonschema.Schema{Point{}.JSONSchema(), strict.SchemaOf(&nodeKeys{})}}
}

func isMapping(node ast.Node) bool {
	switch node.(type) {
	case *ast.MappingNode, *ast.MappingValueNode:
		return true
	}
	return false
}

// Offsets are readings of a tape.
type Offsets struct {
	Length     Measure   `yaml:"length" jsonschema_description:"length of the line that is measured along, the fold or the grainline; as many steps as there are readings if not given"`
	Every      Measure   `yaml:"every" jsonschema_description:"how far apart the readings are: 5 cm; each list also has one at its corner"`
	At         []Measure `yaml:"at" jsonschema_description:"places of the readings of the sides, in place of every"`
	Across     []Measure `yaml:"across" jsonschema:"required" jsonschema_description:"how far the right edge lies from the line, from the lower corner up"`
	AcrossLeft []Measure `yaml:"across_left" jsonschema_description:"how far the left edge lies from the line; not given, the line is the left edge"`
	Top        []Measure `yaml:"top" jsonschema_description:"how far the top edge lies above the end of the line, from the line out to the right corner; square to the line if not given"`
	TopLeft    []Measure `yaml:"top_left" jsonschema_description:"the like out to the left corner"`
	Bottom     []Measure `yaml:"bottom" jsonschema_description:"how far the bottom edge lies above the beginning of the line (negative: below), from the line out to the right corner"`
	BottomLeft []Measure `yaml:"bottom_left" jsonschema_description:"the like out to the left corner"`
	Edges      EdgeNames `yaml:"edges" jsonschema_description:"names of the edges: {right: side, bottom: skirt hem, top: waist, left: centre front}"`
}

// EdgeNames are other names for the edges of readings.
type EdgeNames struct {
	Bottom Text `yaml:"bottom" jsonschema_description:"name of the bottom edge"`
	Right  Text `yaml:"right" jsonschema_description:"name of the right edge"`
	Top    Text `yaml:"top" jsonschema_description:"name of the top edge"`
	Left   Text `yaml:"left" jsonschema_description:"name of the left edge"`
}
