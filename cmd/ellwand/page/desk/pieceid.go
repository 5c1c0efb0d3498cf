package desk

import (
	"fmt"
	"strconv"
	"strings"

	"ellwand/pieces/language"
)

// PieceID names one of the pieces of a lay: its garment, size, name and number.
type PieceID struct {
	Garment, Size, Name string
	Copy                int
}

var (
	escapes   = strings.NewReplacer("%", "%25", "/", "%2F")
	unescapes = strings.NewReplacer("%2F", "/", "%25", "%")
)

// String is the one text that pages repeat.
func (id PieceID) String() string {
	return fmt.Sprintf("%s/%s/%s/%d", escapes.Replace(id.Garment), escapes.Replace(id.Size), escapes.Replace(id.Name),
		id.Copy)
}

// errNoPiece refuses a text that names no piece.
var errNoPiece = language.Refuse("there is no such piece in this lay any more; load the page again",
	"dieses Teil gibt es in der Lage nicht mehr; laden Sie die Seite neu")

// ParsePieceID reads it back.
func ParsePieceID(text string) (PieceID, error) {
	parts := strings.Split(text, "/")
	if len(parts) != 4 {
		return PieceID{}, errNoPiece
	}
	number, err := strconv.Atoi(parts[3])
	if err != nil || number < 1 {
		return PieceID{}, errNoPiece
	}
	return PieceID{unescapes.Replace(parts[0]), unescapes.Replace(parts[1]), unescapes.Replace(parts[2]), number}, nil
}
