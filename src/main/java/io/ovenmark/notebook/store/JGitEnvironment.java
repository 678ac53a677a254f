package io.ovenmark.notebook.store;

import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.eclipse.jgit.errors.ConfigInvalidException;
import org.eclipse.jgit.lib.Config;
import org.eclipse.jgit.storage.file.FileBasedConfig;
import org.eclipse.jgit.util.FS;
import org.eclipse.jgit.util.SystemReader;

/**
 * What JGit may see of the machine: the user's Git configuration for reading and nothing else.
 *
 * <p>By itself JGit runs native Git to find the system configuration, measures how finely the disk
 * keeps time by writing probe files, and stores the answer in the user's home. All three are
 * switched off here: there is no system configuration, and a disk is taken to keep time to two
 * seconds, the coarsest in use (FAT), which only means that files changed in the last moments are
 * read again.
 */
final class JGitEnvironment extends SystemReader.Delegate {
  private static final long TIME_RESOLUTION_NANOS = 2_000_000_000L;

  private JGitEnvironment(SystemReader machine) {
    super(machine);
  }

  /** Puts this environment into effect for the whole program; again and again does no harm. */
  static synchronized void install() {
    SystemReader current = SystemReader.getInstance();
    if (!(current instanceof JGitEnvironment)) {
      SystemReader.setInstance(new JGitEnvironment(current));
    }
  }

  @Override
  public FileBasedConfig openSystemConfig(Config parent, FS fs) {
    return new Nothing(parent, fs);
  }

  @Override
  public FileBasedConfig openJGitConfig(Config parent, FS fs) {
    return new Nothing(parent, fs);
  }

  @Override
  public FileBasedConfig openUserConfig(Config parent, FS fs) {
    return new KnownDisk(super.openUserConfig(parent, fs), fs);
  }

  /** A configuration without a file. */
  private static final class Nothing extends FileBasedConfig {
    Nothing(Config parent, FS fs) {
      super(parent, null, fs);
    }

    @Override
    public void load() {}

    @Override
    public boolean isOutdated() {
      return false;
    }
  }

  /** The user's configuration, with an answer to the question how finely the disk keeps time. */
  private static final class KnownDisk extends FileBasedConfig {
    private final FileBasedConfig user;

    KnownDisk(FileBasedConfig user, FS fs) {
      super(user, null, fs);
      this.user = user;
    }

    @Override
    public void load() throws IOException, ConfigInvalidException {
      user.load();
    }

    @Override
    public boolean isOutdated() {
      return user.isOutdated();
    }

    @Override
    public long getTimeUnit(
        String section, String subsection, String name, long otherwise, TimeUnit wanted) {
      if ("filesystem".equals(section)) {
        return wanted.convert(TIME_RESOLUTION_NANOS, TimeUnit.NANOSECONDS);
      }
      return super.getTimeUnit(section, subsection, name, otherwise, wanted);
    }
  }
}
