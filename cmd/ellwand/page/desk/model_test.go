package desk

import (
	"bytes"
	"fmt"
	"os"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/cmd/ellwand/page/edit"
	"ellwand/cmd/ellwand/page/folder"
	"ellwand/cmd/ellwand/strict"
)

// bag is a job that is resolved quickly, written by hand.
const bag = "# for the market\njob: Bag   # one\nunits: cm\n\ngarments:\n  - name: bag\n    pieces:\n" +
	"      - {name: side, width: 38, height: 44, cut: 2}  # both sides\n      - name: strap\n        width: 9\n" +
	"        height: 70\n# the cloth\ncloths:\n  - name: shell\n    width: 90   # measured\n"

// snapshot of what a desk holds and its file.
type snapshot struct {
	text  string
	typed map[string]HalfValue
}

// model of a desk: its states, and which one stands.
type model struct {
	t      *rapid.T
	folder *folder.Folder
	desk   *Desk
	states []snapshot
	at     int
	// going is the path of typing that may go on.
	going string
}

func (m *model) path() string { return m.folder.PathOf("bag.yaml") }

func (m *model) now() snapshot { return m.states[m.at] }

func (m *model) disk() string {
	text, err := os.ReadFile(m.path())
	require.NoError(m.t, err)
	return string(text)
}

// agree checks that desk, file and model are one.
func (m *model) agree() {
	state := m.desk.State()
	require.Equal(m.t, m.now().text, state.Text)
	require.Equal(m.t, m.now().text, m.disk())
	require.Equal(m.t, len(m.now().typed), len(state.Typed))
	for key, half := range m.now().typed {
		require.Equal(m.t, half.Value, state.Typed[key].Value)
	}
	require.Equal(m.t, m.at > 0, state.CanUndo)
	require.Equal(m.t, m.at < len(m.states)-1, state.CanRedo)
}

// push a state behind the one that stands.
func (m *model) push(s snapshot) {
	if s.text == m.now().text && fmt.Sprint(s.typed) == fmt.Sprint(m.now().typed) {
		return
	}
	m.states = append(m.states[:m.at+1:m.at+1], s)
	m.at++
}

// act does something that makes a step, or none.
func (m *model) act(going string, actions ...Action) {
	state, err := m.desk.Act(m.desk.State().Revision, actions)
	if err != nil {
		m.agree() // refused as a whole
		return
	}
	next := snapshot{state.Text, state.Typed}
	if next.text == m.now().text && fmt.Sprint(next.typed) == fmt.Sprint(m.now().typed) {
		return
	}
	if going != "" && going == m.going && m.at == len(m.states)-1 {
		m.states[m.at] = next
	} else {
		m.push(next)
	}
	m.going = going
}

func (m *model) move(to int, action Action) {
	_, err := m.desk.Act(m.desk.State().Revision, []Action{action})
	require.NoError(m.t, err)
	if to >= 0 && to < len(m.states) {
		if m.at != to {
			m.going = ""
		}
		m.at = to
	}
}

// reopen the desk, as after the program was ended or killed.
func (m *model) reopen() {
	require.NoError(m.t, m.desk.Close())
	var err error
	m.desk, err = Open(m.folder, "bag.yaml")
	require.NoError(m.t, err)
}

// forgetWritten takes back the last line of the journal, as if the program had been killed
// before it.
func (m *model) forgetWritten() {
	name := m.folder.PathOf(journalName("bag.yaml"))
	text, err := os.ReadFile(name)
	require.NoError(m.t, err)
	text, is := bytes.CutSuffix(text, []byte(writtenLine+"\n"))
	require.True(m.t, is)
	require.NoError(m.t, os.WriteFile(name, text, 0o600))
}

// inMemory is a folder in which a file is on its disk at once, where there is one.
func inMemory() string {
	const folder = "/dev/shm"
	if _, err := os.Stat(folder); err != nil {
		return ""
	}
	return folder
}

// paths that are set, values that stand, that do not, and that need quotation marks.
var (
	somePaths = []strict.Path{
		strict.Top("job"), strict.Top("client"), strict.Top("units"), strict.Top("currency"),
		strict.Top("garments").Entry(0).Key("name"), strict.Top("garments").Entry(0).Key("quantity"),
		strict.Top("garments").Entry(0).Key("pieces").Entry(0).Key("width"),
		strict.Top("garments").Entry(0).Key("pieces").Entry(1).Key("height"),
		strict.Top("garments").Entry(0).Key("pieces").Entry(1),
		strict.Top("cloths").Entry(0).Key("width"), strict.Top("cloths").Entry(0).Key("nap"),
		strict.Top("cloths").Entry(0).Key("flaws").Entry(0).Key("radius"), strict.Top("quote").Key("terms").Entry(0),
	}
	someValues = []string{"", "4", "40", "40,5", "1 3/8", "9 in", "yes", "one way", "x: # y", "\"", "ü 'n'", "- a", "EUR",
		"cm"}
)

func setting(path strict.Path, value string, typing bool) Action {
	return Action{Set: &Setting{Path: Path(path), Value: Value{edit.Text(value)}, Typing: typing}}
}

// Whatever is done in whatever order, page, file and journal agree, every step can be gone
// back, and undo to the start gives the first file to the byte.
func TestDeskInTheModel(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		home, err := os.MkdirTemp(inMemory(), "desk")
		require.NoError(t, err)
		defer os.RemoveAll(home)
		f, err := folder.Open(home)
		require.NoError(t, err)
		defer f.Close()
		m := &model{t: t, folder: f, states: []snapshot{{text: bag}}}
		require.NoError(t, os.WriteFile(m.path(), []byte(bag), 0o600))
		m.desk, err = Open(f, "bag.yaml")
		require.NoError(t, err)
		path := rapid.SampledFrom(somePaths)
		value := rapid.SampledFrom(someValues)
		t.Repeat(map[string]func(*rapid.T){
			"": func(*rapid.T) { m.agree() },
			"set": func(t *rapid.T) {
				m.act("", setting(path.Draw(t, "path"), value.Draw(t, "value"), false))
			},
			"type": func(t *rapid.T) {
				at := path.Draw(t, "path")
				m.act(at.String(), setting(at, value.Draw(t, "value"), true))
			},
			"unset": func(t *rapid.T) { m.act("", Action{Unset: &Place{Path: Path(path.Draw(t, "path"))}}) },
			"two at once": func(t *rapid.T) {
				m.act("", setting(path.Draw(t, "one"), value.Draw(t, "value"), false),
					Action{Unset: &Place{Path: Path(path.Draw(t, "other"))}})
			},
			"units": func(t *rapid.T) {
				m.act("", Action{Units: rapid.SampledFrom([]string{"cm", "mm", "in"}).Draw(t, "units")})
			},
			"place": func(t *rapid.T) {
				id, at, turn := "bag//strap/1", [2]float64{rapid.Float64Range(0, 900).Draw(t, "x"), 20}, 90.
				m.act("", Action{Place: &Placing{Cloth: "shell", Width: "900mm", Lay: "open", Piece: &id, At: &at,
					Turn: &turn}})
			},
			"free": func(*rapid.T) { m.act("", Action{Free: &Placing{Cloth: "shell", Width: "900mm", Lay: "open"}}) },
			"text": func(t *rapid.T) {
				text := rapid.SampledFrom([]string{bag, "job: [", "", "job: a\nunits: in\n"}).Draw(t, "text")
				m.act("", Action{Text: &text})
			},
			"undo": func(*rapid.T) { m.move(m.at-1, Action{Undo: &struct{}{}}) },
			"redo": func(*rapid.T) { m.move(m.at+1, Action{Redo: &struct{}{}}) },
			"restore": func(t *rapid.T) {
				to := rapid.IntRange(0, 9).Draw(t, "to")
				m.move(to, Action{Restore: &Restoring{to}})
			},
			"reload": func(*rapid.T) { m.reopen() },
			"outside": func(t *rapid.T) {
				more := rapid.SampledFrom([]string{"", "# noted\n", "client: Oda\n", "\xff"})
				text := m.now().text + more.Draw(t, "outside")
				require.NoError(t, os.WriteFile(m.path(), []byte(text), 0o600))
				_, err := m.desk.Look()
				require.NoError(t, err)
				if text != m.now().text {
					m.push(snapshot{text, m.now().typed})
					m.going = ""
				}
			},
			"outside while it was closed": func(t *rapid.T) {
				text := m.now().text + "# later\n"
				require.NoError(t, m.desk.Close())
				require.NoError(t, os.WriteFile(m.path(), []byte(text), 0o600))
				m.desk, err = Open(f, "bag.yaml")
				require.NoError(t, err)
				m.push(snapshot{text, m.now().typed})
				m.going = ""
			},
			"killed before the file was written": func(t *rapid.T) {
				before, at := m.disk(), m.at
				m.act("", setting(strict.Top("client"), value.Draw(t, "value"), false))
				if m.at == at {
					return
				}
				require.NoError(t, os.WriteFile(m.path(), []byte(before), 0o600))
				m.forgetWritten()
				m.reopen()
			},
			"killed within a line of the journal": func(t *rapid.T) {
				file, err := f.Append(journalName("bag.yaml"))
				require.NoError(t, err)
				_, err = file.WriteString(`{"step":{"kind":"cha`)
				require.NoError(t, err)
				require.NoError(t, file.Close())
				m.reopen()
			},
		})
		for m.at > 0 {
			m.move(m.at-1, Action{Undo: &struct{}{}})
		}
		m.agree()
		require.Equal(t, bag, m.disk())
		require.NoError(t, m.desk.Close())
	})
}
