package page

import (
	"errors"
	"fmt"
	"io/fs"
)

// written writes a text under the first free name: "blouse.yaml", "blouse-2.yaml".
func (s *server) written(base, text string) (string, error) {
	for i := 1; ; i++ {
		name := base + ".yaml"
		if i > 1 {
			name = fmt.Sprintf("%s-%d.yaml", base, i)
		}
		if _, err := s.now().folder.Stat(name); errors.Is(err, fs.ErrNotExist) {
			return name, s.now().folder.Write(name, []byte(text))
		}
	}
}
