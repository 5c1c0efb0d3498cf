package limit

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"strings"
)

// Entries are a list on the command line: entries parted by commas, an entry with a
// comma of its own in quotation marks, and the option may stand several times.
type Entries struct {
	into  *[]string
	most  Limit
	given bool
}

// EntriesOf reads a list of no more entries than a limit into a place.
func EntriesOf(into *[]string, most Limit) *Entries { return &Entries{into: into, most: most} }

// String is the list as it stands.
func (l *Entries) String() string {
	if l.into == nil { // as when the usual value is looked for
		return ""
	}
	return strings.Join(*l.into, ",")
}

// Type names what is to be written.
func (l *Entries) Type() string { return "list" }

// Set reads more entries.
func (l *Entries) Set(text string) error {
	reader := csv.NewReader(strings.NewReader(text))
	entries, err := reader.Read()
	switch {
	case errors.Is(err, io.EOF):
		return fmt.Errorf("name at least one, and several with commas between them")
	case err != nil:
		return fmt.Errorf("a quotation mark stands at the wrong place; an entry that has a comma is written as \"one, two\"")
	}
	if !l.given {
		*l.into, l.given = nil, true
	}
	*l.into = append(*l.into, entries...)
	if len(*l.into) > l.most.Most() {
		return fmt.Errorf("it %s", l.most.Sentence())
	}
	return nil
}
