package page

import (
	"bytes"
	"encoding/base64"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/ellwand/words"
	"ellwand/pieces/found"
	"ellwand/pieces/language"
	"ellwand/pieces/measure"
	"ellwand/pieces/paper"
	"ellwand/pieces/tracing"
)

// upload is a file that the page brings in: pieces, a drawing or a photo, with what is said
// of all that is in it.
type upload struct {
	Name   string `json:"name"`
	Base64 string `json:"base64"`
	// Answers by what they are to: cut, pair, grain, allowance, fold, kind.
	Answers map[string]string `json:"answers"`
	// Each has answers for single pieces, by what they are to: "3=sleeve".
	Each map[string][]string `json:"each"`
	// Units of a drawing that does not say its own; Ground and Sheets are what is known in
	// a photo: the side of its squares, or the paper of its sheets.
	Units  string `json:"units"`
	Ground string `json:"ground"`
	Sheets string `json:"sheets"`
	// Distances that were measured in a scan, two: "9,8 400,8 = 60cm".
	Distances []string `json:"distances"`
}

// broughtIn writes an uploaded pattern into the folder as a file of pieces, and returns its
// name.
func (s *server) broughtIn(u upload) (string, error) {
	data, err := u.data()
	if err != nil {
		return "", err
	}
	ending := strings.ToLower(filepath.Ext(u.Name))
	base := u.base()
	if ending == ".yaml" || ending == ".yml" {
		if err := limit.PiecesFile.Check(language.Say("the file", "die Datei"), len(data)); err != nil {
			return "", err
		}
		return s.written(base+"-pieces", string(data))
	}
	text, err := u.imported(base, data)
	if err != nil {
		return "", err
	}
	return s.written(base+"-pieces", text)
}

// base of the names of what is made of the file.
func (u upload) base() string {
	return job.Slug(strings.TrimSuffix(filepath.Base(u.Name), filepath.Ext(u.Name)))
}

// data of the file.
func (u upload) data() ([]byte, error) {
	data, err := base64.StdEncoding.DecodeString(u.Base64)
	if err != nil {
		return nil, errBroken
	}
	if len(data) == 0 {
		return nil, errEmpty
	}
	return data, limit.DrawingSize.Check(language.Say("the file", "die Datei"), len(data))
}

// read what is drawn in the file. The importer reads it from a folder of its own, which is
// gone afterwards.
func (u upload) read(base string, data []byte) (app.Imported, error) {
	home, err := os.MkdirTemp("", "ellwand-")
	if err != nil {
		return app.Imported{}, errNoRoom
	}
	defer os.RemoveAll(home)
	path := filepath.Join(home, base)
	if err := os.WriteFile(path, data, 0o600); err != nil {
		return app.Imported{}, errNoRoom
	}
	options, err := u.options()
	if err != nil {
		return app.Imported{}, err
	}
	if tracing.Is(data) && options.Reference.Square == 0 && options.Reference.Sheet[0] == 0 &&
		len(options.Reference.Distances) == 0 {
		return app.Imported{}, errUnknownScale
	}
	all, err := app.ReadDrawings([]string{path}, options)
	if err != nil {
		err = errors.New(strings.ReplaceAll(err.Error(), path, "the file"))
	}
	return all, err
}

// options of reading what the file itself does not say.
func (u upload) options() (found.Options, error) {
	var out found.Options
	if u.Units != "" {
		unit, err := measure.ParseUnit(u.Units)
		if err != nil {
			return out, err
		}
		out.Unit = unit.Millimetres()
	}
	switch {
	case u.Ground != "":
		side, err := measure.Parse(u.Ground, measure.Centimetre)
		const least, most = 2, 500 // mm [source.OwnChoice]
		if err != nil || side < least || side > most {
			return out, fmt.Errorf("%q is no side of the squares on the ground; write a length from 2 mm to 50 cm, such as 1 cm",
				u.Ground)
		}
		out.Reference.Square = float64(side)
	case u.Sheets != "":
		sheet, err := paper.Parse(u.Sheets, measure.Millimetre)
		if err != nil {
			return out, err
		}
		out.Reference.Sheet = [2]float64{sheet.Width, sheet.Height}
	}
	for _, text := range u.Distances {
		distance, ok := app.ParseDistance(text)
		if !ok || len(u.Distances) != 2 {
			return out, errDistances
		}
		out.Reference.Distances = append(out.Reference.Distances, distance)
	}
	return out, nil
}

// imported makes a file of pieces of a drawing.
func (u upload) imported(base string, data []byte) (string, error) {
	all, err := u.read(base, data)
	if err != nil {
		return "", err
	}
	answers := u.answers()
	if err := answers.Check(all.Found); err != nil {
		return "", err
	}
	done, notes, err := all.Collection(answers, found.Options{})
	var missing *app.Unanswered
	var taken []string
	if errors.As(err, &missing) {
		taken = grant(missing, &answers)
		done, notes, err = all.Collection(answers, found.Options{})
	}
	var fault *app.FoundFault
	switch {
	case errors.As(err, &fault):
		return "", &language.Refusal{Sentence: words.FoundFault(fault, all.Unit.System())}
	case err != nil:
		return "", err
	}
	var out bytes.Buffer
	for _, sentence := range append(taken, words.Found(notes, all.Unit.System())...) {
		fmt.Fprintf(&out, "# %s\n", strings.ReplaceAll(sentence, "\n", " "))
	}
	if err := done.WriteFile(&out); err != nil {
		return "", err
	}
	return out.String(), nil
}

func (u upload) answers() app.Answers {
	list := func(key string) []string {
		out := slices.Clone(u.Each[key])
		if u.Answers[key] != "" {
			out = append(out, u.Answers[key])
		}
		return out
	}
	return app.Answers{Name: list("name"), Size: list("size"), Cloth: list("cloth"), Cut: list("cut"), Pair: list("pair"),
		Fold: list("fold"), Grain: list("grain"), Allowance: list("allowance"), Kind: list("kind")}
}
