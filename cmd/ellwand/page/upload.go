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
)

// upload is a file that the page brings in: pieces, a drawing or a photo, with what is said
// of all that is in it.
type upload struct {
	Name   string `json:"name"`
	Base64 string `json:"base64"`
	// Answers by what they are to: cut, pair, grain, allowance, fold, kind.
	Answers map[string]string `json:"answers"`
}

// broughtIn writes an uploaded pattern into the folder as a file of pieces, and returns its
// name.
func (s *server) broughtIn(u upload) (string, error) {
	data, err := base64.StdEncoding.DecodeString(u.Base64)
	if err != nil {
		return "", errors.New("the file did not arrive whole; choose it again")
	}
	if err := limit.DrawingSize.Check("the file", len(data)); err != nil {
		return "", err
	}
	ending := strings.ToLower(filepath.Ext(u.Name))
	base := job.Slug(strings.TrimSuffix(filepath.Base(u.Name), filepath.Ext(u.Name)))
	if ending == ".yaml" || ending == ".yml" {
		if err := limit.PiecesFile.Check("the file", len(data)); err != nil {
			return "", err
		}
		return s.written(base+"-pieces", string(data))
	}
	text, err := imported(base, data, u.Answers)
	if err != nil {
		return "", err
	}
	return s.written(base+"-pieces", text)
}

// imported makes a file of pieces of a drawing. The importer reads it from a folder of its
// own, which is gone afterwards.
func imported(base string, data []byte, said map[string]string) (string, error) {
	home, err := os.MkdirTemp("", "ellwand-")
	if err != nil {
		return "", errors.New("there is no room for the file in the folder for temporary files")
	}
	defer os.RemoveAll(home)
	path := filepath.Join(home, base)
	if err := os.WriteFile(path, data, 0o600); err != nil {
		return "", errors.New("there is no room for the file in the folder for temporary files")
	}
	all, err := app.ReadDrawings([]string{path}, found.Options{})
	if err != nil {
		return "", errors.New(strings.ReplaceAll(err.Error(), path, "the file"))
	}
	answers := answersFrom(said)
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
		return "", errors.New(words.FoundFault(fault, all.Unit.System()))
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

func answersFrom(said map[string]string) app.Answers {
	list := func(key string) []string {
		if said[key] == "" {
			return nil
		}
		return []string{said[key]}
	}
	return app.Answers{Name: list("name"), Size: list("size"), Cloth: list("cloth"), Cut: list("cut"), Pair: list("pair"),
		Fold: list("fold"), Grain: list("grain"), Allowance: list("allowance"), Kind: list("kind")}
}

// granted is what is taken for granted where neither the drawing nor anybody says it; it
// stands at the head of the file, to be looked through.
var granted = []struct {
	question found.Question
	answer   string
	sentence string
}{
	{found.AskName, "piece %d", "Pieces without a name are numbered."},
	{found.AskCut, "1", "Where the drawing does not say how many are cut, it is one."},
	{found.AskGrain, "up", "Where the drawing has no grainline, it runs up the drawing."},
	{found.AskAllowance, "unknown", "Whether outlines have their allowances in them is not known; nothing is added."},
}

// grant answers what is missing, and says how.
func grant(missing *app.Unanswered, answers *app.Answers) []string {
	var out []string
	for _, lack := range missing.List {
		for _, one := range granted {
			if !slices.Contains(lack.Questions, one.question) {
				continue
			}
			text := one.answer
			if strings.Contains(text, "%d") {
				text = fmt.Sprintf(text, lack.Number)
			}
			answers.Add(one.question, lack.Number, text)
			if !slices.Contains(out, one.sentence) {
				out = append(out, one.sentence)
			}
		}
	}
	return out
}
