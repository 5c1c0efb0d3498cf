package pdfin

import (
	"math"
	"strings"

	"github.com/paulmach/orb"
	"github.com/pdfcpu/pdfcpu/pkg/pdfcpu/types"

	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/geometry"
	"ellwand/pieces/linework"
)

// wording are the operators that set text [source.PDF17].
var wording = map[string]func(s *shower, o operands, resources types.Dict) error{
	"BT": func(s *shower, _ operands, _ types.Dict) error {
		s.line, s.at = pieces.Identity(), pieces.Identity()
		return nil
	},
	"Tf": func(s *shower, o operands, resources types.Dict) error { return s.setFont(o, resources) },
	"TL": func(s *shower, o operands, _ types.Dict) error {
		s.atNumbers(o, 1, func(v []float64) { s.leading = v[0] })
		return nil
	},
	"Td": func(s *shower, o operands, _ types.Dict) error {
		s.atNumbers(o, 2, func(v []float64) { s.newLine(v[0], v[1]) })
		return nil
	},
	"TD": func(s *shower, o operands, _ types.Dict) error {
		s.atNumbers(o, 2, func(v []float64) { s.leading = -v[1]; s.newLine(v[0], v[1]) })
		return nil
	},
	"Tm": func(s *shower, o operands, _ types.Dict) error {
		s.atNumbers(o, 6, func(v []float64) { s.line = matrix(v); s.lettering.at = s.line })
		return nil
	},
	"T*": func(s *shower, _ operands, _ types.Dict) error { s.newLine(0, -s.leading); return nil },
	"Tj": func(s *shower, o operands, _ types.Dict) error { return s.write(o) },
	"TJ": func(s *shower, o operands, _ types.Dict) error { return s.write(o) },
	"'":  func(s *shower, o operands, _ types.Dict) error { s.newLine(0, -s.leading); return s.write(o) },
	"\"": func(s *shower, o operands, _ types.Dict) error { s.newLine(0, -s.leading); return s.write(o) },
}

func (s *shower) newLine(x, y float64) {
	s.line = pieces.Move(x, y).Then(s.line)
	s.lettering.at = s.line
}

func (s *shower) setFont(o operands, resources types.Dict) error {
	if len(o) < 2 || o[len(o)-1].kind != numeric || o[len(o)-2].kind != name {
		return nil
	}
	key := string(o[len(o)-2].text)
	s.size = o[len(o)-1].number
	if s.fonts == nil {
		s.fonts = map[string]*font{}
	}
	known := s.fonts[key]
	if known == nil || len(s.showing) > 0 { // a form has names of its own
		read, err := s.d.fontOf(resources, key)
		if err != nil {
			return err
		}
		known = read
		if len(s.showing) == 0 {
			s.fonts[key] = known
		}
	}
	s.font = known
	return nil
}

// write words where the text has come to. How wide the letters are is not reckoned: the
// next words stand at a guess where nothing says their place.
func (s *shower) write(o operands) error {
	if len(o) == 0 {
		return nil
	}
	parts := o[len(o)-1].list
	if o[len(o)-1].kind != array {
		parts = []token{o[len(o)-1]}
	}
	var words strings.Builder
	for _, t := range parts {
		switch {
		case t.kind == text:
			words.WriteString(s.font.words(t.text))
		case t.kind == numeric && t.number < -200:
			words.WriteByte(' ')
		}
	}
	place := s.lettering.at.Then(s.by)
	size := math.Abs(s.size) * math.Sqrt(math.Abs(place.A*place.D-place.B*place.C))
	letters := words.String()
	at := place.Apply(orb.Point{})
	s.lettering.at = pieces.Move(s.size*usualWidth*float64(len([]rune(letters))), 0).Then(s.lettering.at)
	clean := strings.Join(strings.Fields(letters), " ")
	if clean == "" || !(math.Abs(at[0])+math.Abs(at[1])+size < 1e6) {
		return nil
	}
	if err := s.d.budget.Spend(found.Words, 1); err != nil {
		return err
	}
	s.put(clean, at, size)
	return nil
}

// usualWidth of a letter, in sizes of the type [source.OwnChoice].
const usualWidth = 0.5

// put words into the drawing, or at the end of those that stand before them.
func (s *shower) put(words string, at orb.Point, size float64) {
	if n := len(s.out.Words); n > 0 {
		last := &s.out.Words[n-1]
		ends := last.At[0] + usualWidth*last.Size*float64(len([]rune(last.Text)))
		follows := last.Page == s.index && math.Abs(last.At[1]-at[1]) < 0.1*size && math.Abs(last.Size-size) < 0.01*size &&
			at[0] > last.At[0] && math.Abs(at[0]-ends) < 0.8*size
		if follows && len(last.Text)+len(words) < linework.MostLetters {
			if at[0]-ends > 0.3*size {
				last.Text += " "
			}
			last.Text += words
			return
		}
	}
	if letters := []rune(words); len(letters) > linework.MostLetters {
		words = string(letters[:linework.MostLetters])
	}
	box := s.clip.Pad(size)
	if !geometry.Holds(box, orb.Bound{Min: at, Max: at}) {
		return
	}
	here := layer{}
	if len(s.marks) > 0 {
		here = s.marks[len(s.marks)-1]
	}
	s.out.Words = append(s.out.Words, linework.Words{Text: words, At: at, Size: size, Group: -1,
		Layer: here.name, Page: s.index})
}
