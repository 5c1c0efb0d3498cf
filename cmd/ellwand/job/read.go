package job

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"reflect"
	"strings"

	"github.com/goccy/go-yaml"
	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/parser"

	"ellwand/cmd/ellwand/limit"
)

// Read reads the job file at a path. The error is *Faults when the file can be
// opened but not used.
func Read(path string) (*File, error) {
	info, err := os.Stat(path)
	if err != nil {
		return nil, unreadable(path, err)
	}
	if info.IsDir() {
		return nil, fmt.Errorf("%s is a folder; give the job file inside it", path)
	}
	file, err := os.Open(path)
	if err != nil {
		return nil, unreadable(path, err)
	}
	defer file.Close()
	data, err := io.ReadAll(io.LimitReader(file, int64(limit.JobSize.Most())+1))
	if err != nil {
		return nil, unreadable(path, err)
	}
	if err := limit.JobSize.Check(path, len(data)); err != nil {
		return nil, err
	}
	return Parse(path, data)
}

func unreadable(path string, err error) error {
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return fmt.Errorf("there is no file %s; check the name, or write a starter job with: ellwand new %s", path, path)
	case errors.Is(err, fs.ErrPermission):
		return fmt.Errorf("%s may not be read; change its permissions, or copy it to a folder of your own", path)
	}
	return fmt.Errorf("%s cannot be read: %w", path, err)
}

// Parse reads a job from its text; name is the file's, for messages.
func Parse(name string, data []byte) (*File, error) {
	faults := &Faults{File: name}
	data, unreadable := decoded(data)
	if unreadable != nil {
		faults.List = append(faults.List, *unreadable)
		return nil, faults.orNil()
	}
	if line := tooDeep(data); line > 0 {
		faults.List = append(faults.List, Fault{Line: line, Kind: NotYAML, Text: "the file " + limit.Depth.Sentence()})
		return nil, faults.orNil()
	}
	tree, err := parser.ParseBytes(data, 0)
	if err != nil {
		faults.List = append(faults.List, syntaxFault(err))
		return nil, faults.orNil()
	}
	for len(tree.Docs) > 1 && tree.Docs[len(tree.Docs)-1].Body == nil { // --- at the end, and nothing behind it
		tree.Docs = tree.Docs[:len(tree.Docs)-1]
	}
	if len(tree.Docs) == 0 || tree.Docs[0].Body == nil {
		faults.List = append(faults.List, Fault{Line: 1, Kind: Missing,
			Text: "the file is empty; write a starter job with: ellwand new " + name})
		return nil, faults.orNil()
	}
	if len(tree.Docs) > 1 {
		faults.List = append(faults.List, Fault{Line: secondLine(tree.Docs[1]), Kind: WrongShape,
			Text: "a file holds one job; put what follows --- into a file of its own"})
		return nil, faults.orNil()
	}
	s := shape{faults: faults, lines: newLines()}
	s.lines.note(Path{}, firstLine(tree.Docs[0].Body))
	s.check(tree.Docs[0].Body, reflect.TypeFor[File](), Path{})
	if err := faults.orNil(); err != nil {
		return nil, err
	}
	var file File
	if err := yaml.NodeToValue(tree.Docs[0].Body, &file); err != nil {
		faults.List = append(faults.List, syntaxFault(err))
		return nil, faults.orNil()
	}
	file.name, file.lines = name, s.lines
	return &file, nil
}

// secondLine is where a second job begins.
func secondLine(doc *ast.DocumentNode) int {
	if doc.Body != nil {
		return doc.Body.GetToken().Position.Line
	}
	if doc.Start != nil {
		return doc.Start.Position.Line
	}
	return 1
}

// syntaxFault rewords what the YAML reader says.
func syntaxFault(err error) Fault {
	var said yaml.Error
	if !errors.As(err, &said) {
		return Fault{Line: 1, Text: "this is not a job file in YAML; compare it with a starter job: ellwand new example.yaml"}
	}
	fault := Fault{Line: 1, Text: reworded(said.GetMessage())}
	if token := said.GetToken(); token != nil && token.Position != nil {
		fault.Line = token.Position.Line
	}
	return fault
}

// rewordings of the YAML reader's messages, by a part of each.
var rewordings = []struct{ part, text string }{
	{"already defined", "this key stands twice; keep one of them"},
	{"tab character", "lines are indented with spaces, not tabs"},
	{"character '\t'", "lines are indented with spaces, not tabs"},
	{"end character of", "a quotation mark is opened and never closed"},
	{"mapping value is not allowed",
		"a colon stands where none may be: check the indentation here and on the line below, or put the value in " +
			"quotation marks"},
	{"flow map", "a { is opened and not closed properly"},
	{"flow mapping", "a { is opened and not closed properly"},
	{"sequence end", "a [ is opened and not closed properly"},
}

func reworded(message string) string {
	for _, r := range rewordings {
		if strings.Contains(message, r.part) {
			return r.text
		}
	}
	return "the YAML cannot be read here: check the indentation, colons, dashes and quotation marks of this line " +
		"and the one above"
}
