// Package strict reads YAML files whose every key and value is known: an unknown
// key or a value of the wrong kind refuses the whole file, with the line and what
// to write instead. The types that a file is read into are its only description:
// keys, their order in hints, the JSON Schema and the pages of help come from them.
//
// Every value is kept as the text that was written: what it means is for the
// reader of each kind of file.
package strict

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
	"ellwand/pieces/language"
)

// ReadFile reads the bytes of a file, as many as there may be.
func (f Form) ReadFile(path string) ([]byte, error) {
	info, err := os.Stat(path)
	if err != nil {
		return nil, f.unreadable(path, err)
	}
	if info.IsDir() {
		return nil, fmt.Errorf("%s is a folder; give %s inside it", path, strings.Replace(f.File.String(), "a ",
			"the ", 1))
	}
	file, err := os.Open(path)
	if err != nil {
		return nil, f.unreadable(path, err)
	}
	defer file.Close()
	data, err := io.ReadAll(io.LimitReader(file, int64(f.Size.Most())+1))
	if err != nil {
		return nil, f.unreadable(path, err)
	}
	if err := f.Size.Check(language.Name(path), len(data)); err != nil {
		return nil, err
	}
	return data, nil
}

// Opened is the file at a path as parse reads it. The error is *Faults when the file can
// be opened but not used.
func Opened[T any](f Form, path string, parse func(name string, data []byte) (*T, error)) (*T, error) {
	data, err := f.ReadFile(path)
	if err != nil {
		return nil, err
	}
	return parse(path, data)
}

func (f Form) unreadable(path string, err error) error {
	switch {
	case errors.Is(err, fs.ErrNotExist):
		if near := nearFile(path); near != "" {
			return fmt.Errorf("there is no file %s; did you mean %s?", path, near)
		}
		return fmt.Errorf("there is no file %s; check the name, or %s%s", path, f.Begin, path)
	case errors.Is(err, fs.ErrPermission):
		return fmt.Errorf("%s may not be read; change its permissions, or copy it to a folder of your own", path)
	}
	return fmt.Errorf("%s cannot be read: %w", path, err)
}

// Parse reads a file from its text into a pointer to a struct; name is the file's,
// for messages. The error is *Faults.
func (f Form) Parse(name string, data []byte, into any) (Lines, error) {
	f.of = reflect.TypeOf(into).Elem()
	faults := &Faults{File: name}
	body, fault := f.tree(name, data)
	if fault != nil {
		faults.add(*fault)
		return Lines{}, faults.OrNil()
	}
	s := shape{form: f, faults: faults, lines: newLines()}
	s.lines.note(Path{}, firstLine(body))
	s.check(body, f.of, Path{})
	if err := faults.OrNil(); err != nil {
		return Lines{}, err
	}
	if err := yaml.NodeToValue(body, into); err != nil {
		faults.add(f.syntaxFault(err))
		return Lines{}, faults.OrNil()
	}
	return s.lines, nil
}

// tree parses the YAML of the one document that a file holds.
func (f Form) tree(name string, data []byte) (ast.Node, *Fault) {
	data, unreadable := decoded(data)
	if unreadable != nil {
		return nil, unreadable
	}
	if line := tooDeep(data); line > 0 {
		return nil, &Fault{Line: line, Kind: NotYAML,
			Said: language.Say("the file %s", "die Datei %s", limit.Depth.Sentence())}
	}
	tree, err := parser.ParseBytes(data, 0)
	if err != nil {
		fault := f.syntaxFault(err)
		return nil, &fault
	}
	for len(tree.Docs) > 1 && tree.Docs[len(tree.Docs)-1].Body == nil { // --- at the end, and nothing behind it
		tree.Docs = tree.Docs[:len(tree.Docs)-1]
	}
	if len(tree.Docs) == 0 || tree.Docs[0].Body == nil {
		return nil, &Fault{Line: 1, Kind: Missing,
			Said: language.Say("the file is empty; %s%s", "die Datei ist leer; %s%s", f.Begin, name)}
	}
	if len(tree.Docs) > 1 {
		return nil, &Fault{Line: secondLine(tree.Docs[1]), Kind: WrongShape,
			Said: language.Say("a file holds %s; put what follows --- into a file of its own",
				"eine Datei enthält %s; was hinter --- steht, gehört in eine eigene", f.One)}
	}
	return tree.Docs[0].Body, nil
}

// secondLine is where a second document begins.
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
func (f Form) syntaxFault(err error) Fault {
	var said yaml.Error
	if !errors.As(err, &said) {
		return Fault{Line: 1,
			Said: language.Say("this is not %s in YAML; %sexample.yaml, and compare it",
				"das ist keine %s in YAML; %sexample.yaml, und vergleichen Sie", f.File, f.Begin)}
	}
	fault := Fault{Line: 1, Said: reworded(said.GetMessage())}
	if token := said.GetToken(); token != nil && token.Position != nil {
		fault.Line = token.Position.Line
	}
	return fault
}

// rewordings of the YAML reader's messages, by a part of each.
var rewordings = []struct{ part, english, german string }{
	{"already defined", "this key stands twice; keep one of them",
		"dieser Schlüssel steht zweimal da; einer muss weg"},
	{"tab character", "lines are indented with spaces, not tabs",
		"Zeilen werden mit Leerzeichen eingerückt, nicht mit Tabulatoren"},
	{"character '\t'", "lines are indented with spaces, not tabs",
		"Zeilen werden mit Leerzeichen eingerückt, nicht mit Tabulatoren"},
	{"end character of", "a quotation mark is opened and never closed",
		"ein Anführungszeichen wird geöffnet und nie geschlossen"},
	{"mapping value is not allowed",
		"a colon stands where none may be: check the indentation here and on the line below, or put the value in " +
			"quotation marks",
		"hier darf kein Doppelpunkt stehen: prüfen Sie die Einrückung hier und in der Zeile darunter, oder setzen Sie " +
			"den Wert in Anführungszeichen"},
	{"flow map", "a { is opened and not closed properly", "eine { wird geöffnet und nicht richtig geschlossen"},
	{"flow mapping", "a { is opened and not closed properly", "eine { wird geöffnet und nicht richtig geschlossen"},
	{"sequence end", "a [ is opened and not closed properly", "eine [ wird geöffnet und nicht richtig geschlossen"},
}

func reworded(message string) language.Sentence {
	for _, r := range rewordings {
		if strings.Contains(message, r.part) {
			return language.Say(r.english, r.german)
		}
	}
	return language.Say("the YAML cannot be read here: check the indentation, colons, dashes and quotation marks of this "+
		"line and the one above",
		"hier lässt sich das YAML nicht lesen: prüfen Sie Einrückung, Doppelpunkte, Striche und "+
			"Anführungszeichen dieser Zeile und der darüber")
}
