package job

import (
	"reflect"

	"github.com/goccy/go-yaml/ast"
	"github.com/invopop/jsonschema"
)

// worded is a type with a table of its words, in the order of its constants;
// the first is the usual one. Schema, hints and parsing come from that table.
type worded interface{ Words() []string }

// Choice is a word for a value of T, as it stands in the file.
type Choice[T worded] string

// UnmarshalYAML takes the text as it stands.
func (c *Choice[T]) UnmarshalYAML(node ast.Node) error { *c = Choice[T](written(node)); return nil }

// Words are those to choose from.
func (Choice[T]) Words() []string { return wordsOf[T]() }

func wordsOf[T worded]() []string {
	var value T
	return value.Words()
}

// choose reads a word; an empty one is the usual value.
func choose[T interface {
	~int
	worded
}](r *resolver, path Path, what string, chosen Choice[T]) T {
	return T(r.chosen(path, what, string(chosen), wordsOf[T]()))
}

// chooseNamed is the like for a type whose values are their words.
func chooseNamed[T interface {
	~string
	worded
}](r *resolver, path Path, what string, chosen Choice[T]) T {
	words := wordsOf[T]()
	return T(words[r.chosen(path, what, string(chosen), words)])
}

// chosen looks a word up; an empty one is the first.
func (r *resolver) chosen(path Path, what, text string, known []string) int {
	if text == "" {
		return 0
	}
	for i, name := range known {
		if plain(text) == plain(name) {
			return i
		}
	}
	r.fault(path, Unknown, "%s is %q, which is not known; use one of: %s", what, text, joined(known))
	return 0
}

// choiceSchema is the schema of a choice; nil for any other type.
func choiceSchema(t reflect.Type) *jsonschema.Schema {
	choice, ok := reflect.Zero(t).Interface().(worded)
	if !ok || t.Kind() != reflect.String {
		return nil
	}
	schema := &jsonschema.Schema{Type: "string"}
	for _, word := range choice.Words() {
		schema.Enum = append(schema.Enum, word)
	}
	return schema
}

// What a bodice or a skirt has at its centre lines.
type (
	bodiceBack  int
	bodiceFront int
	skirtBack   int
)

const (
	backSeam bodiceBack = iota
	backFold
	backOpening
)

const (
	frontFold bodiceFront = iota
	frontOpening
)

const (
	skirtSeam skirtBack = iota
	skirtFold
)

// dartsGo is where the darts of an A-line skirt go.
type dartsGo int

const (
	toWaist dartsGo = iota
	toHem
)

// foldSide is the edge of a rectangle that lies on the fold.
type foldSide int

const (
	foldLeft foldSide = iota
	foldRight
	foldTop
	foldBottom
)

var (
	bodiceBacks  = [...]string{backSeam: "seam", backFold: "fold", backOpening: "opening"}
	bodiceFronts = [...]string{frontFold: "fold", frontOpening: "opening"}
	skirtBacks   = [...]string{skirtSeam: "seam", skirtFold: "fold"}
	dartsGoTo    = [...]string{toWaist: "waist", toHem: "hem"}
	foldSides    = [...]string{foldLeft: "left", foldRight: "right", foldTop: "top", foldBottom: "bottom"}
)

// Words for it.
func (bodiceBack) Words() []string { return bodiceBacks[:] }

// Words for it.
func (bodiceFront) Words() []string { return bodiceFronts[:] }

// Words for it.
func (skirtBack) Words() []string { return skirtBacks[:] }

// Words for it.
func (dartsGo) Words() []string { return dartsGoTo[:] }

// Words for the sides.
func (foldSide) Words() []string { return foldSides[:] }

// upright says that the side runs along the height of the rectangle.
func (s foldSide) upright() bool { return s == foldLeft || s == foldRight }
