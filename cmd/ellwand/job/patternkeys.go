package job

import (
	"reflect"

	"github.com/goccy/go-yaml"
	"github.com/goccy/go-yaml/ast"
	"github.com/invopop/jsonschema"

	"ellwand/cmd/ellwand/patternfile"
	"ellwand/cmd/ellwand/strict"
)

// Pattern is a file of pieces: its name, or more to say of it.
type Pattern struct {
	File Text `yaml:"file" jsonschema:"required" jsonschema_description:"the file of pieces, beside the job"`
	Size Text `yaml:"size" jsonschema_description:"which of its sizes; that of the wearer or of the job if not given"`
}

// patternKeys are the keys of a pattern.
type patternKeys Pattern

// Shapes that it may be written in.
func (Pattern) Shapes() []reflect.Type {
	return []reflect.Type{reflect.TypeFor[Text](), reflect.TypeFor[patternKeys]()}
}

// UnmarshalYAML takes either shape.
func (p *Pattern) UnmarshalYAML(node ast.Node) error {
	switch node.(type) {
	case *ast.MappingNode, *ast.MappingValueNode:
		return yaml.NodeToValue(node, (*patternKeys)(p))
	}
	p.File = Text(strict.Written(node))
	return nil
}

// JSONSchema accepts either shape.
func (Pattern) JSONSchema() *jsonschema.Schema {
	return &jsonschema.Schema{OneOf: []*jsonschema.Schema{{Type: "string"},
		strict.SchemaOf(patternKeys{})}}
}

// patterns that a job names, each read once.
type patterns map[string]*patternRead

type patternRead struct {
	file *patternfile.File
	err  error
}
